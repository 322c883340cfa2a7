import {
  hydrometerReading2525,
  salinityFromHydrometerReading2525,
  salinityFromSpecificGravity2020,
  salinityFromSpecificGravity2525,
  specificGravity2020,
  specificGravity2525,
} from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

const readingTempsC = [20, 22, 24, 25, 26, 28, 30];

export function hydrometerChecks(): Check[] {
  return readTable('hydrometer.csv').flatMap((row) => {
    const s = row.number('salinity_PSS78');
    const origin = {
      id: `hydrometer/${row.text('case_id')}`,
      source: 'EOS-80 by python-seawater (hydrometer.csv)',
      howVerified: 'computed',
    } as const;
    // To the digits printed; a salinity back from them to 1e-5.
    const gravity = (quantity: string, expected: number, got: number) => ({
      ...{ ...origin, quantity, expected, got, tolerance: 1e-9, unit: '-' },
    });
    const salinity = (quantity: string, got: number) => ({
      ...{ ...origin, quantity, expected: s, got, tolerance: 1e-5, unit: '-' },
    });
    const sg2525 = row.number('sg_25_25_EOS80_[-]');
    const sg2020 = row.number('sg_20_20_EOS80_[-]');
    return [
      gravity('specific gravity 25/25', sg2525, specificGravity2525(s)),
      gravity('specific gravity 20/20', sg2020, specificGravity2020(s)),
      salinity('salinity from 25/25', salinityFromSpecificGravity2525(sg2525)),
      salinity('salinity from 20/20', salinityFromSpecificGravity2020(sg2020)),
      ...readingTempsC.flatMap((tempC) => {
        const reading = row.number(`reading_hydrometer_cal25_25_at_${tempC}C_[sg]`);
        return [
          gravity(`hydrometer at ${tempC} °C`, reading, hydrometerReading2525(tempC, s)),
          salinity(
            `salinity from a hydrometer at ${tempC} °C`,
            salinityFromHydrometerReading2525(reading, tempC),
          ),
        ];
      }),
    ];
  });
}
