import { saturationVapourKPa, seawaterVapourKPa } from '../../../shared/seawater/airHumidity';
import { evaporationKgPerM2PerH } from '../../../shared/seawater/evaporation';
import type { Check } from '../check';
import { readTable } from '../table';

/** Vapour pressure after Hyland & Wexler 1983, evaporation after Shah 2014. */
export function evaporationChecks(): Check[] {
  return readTable('evaporation_examples.csv').flatMap((row) => {
    const waterTempC = row.number('Tw_C');
    const airTempC = row.number('Ta_C');
    const relativeHumidity = row.number('RH');
    const input = { waterTempC, airTempC, relativeHumidity, salinityPractical: 35 };
    const columns: [quantity: string, column: string, got: number, unit: string][] = [
      ['vapour pressure at the water', 'pw_kPa', seawaterVapourKPa(waterTempC, 35), 'kPa'],
      [
        'vapour pressure of the room',
        'pa_kPa',
        saturationVapourKPa(airTempC) * relativeHumidity,
        'kPa',
      ],
      ['evaporation', 'Shah_kg_m2_h', evaporationKgPerM2PerH(input), 'kg/m²/h'],
    ];
    return columns.map(([quantity, column, got, unit]): Check => {
      const expected = row.number(column);
      return {
        id: `evaporation/water ${waterTempC}/air ${airTempC}/${relativeHumidity * 100} %`,
        quantity,
        source: 'Hyland & Wexler 1983, Shah 2014 (evaporation_examples.csv)',
        howVerified: 'computed',
        ...{ expected, got, tolerance: expected * 0.005, unit },
      };
    });
  });
}
