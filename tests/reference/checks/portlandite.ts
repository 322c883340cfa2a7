import { limewaterSaturationGPerL } from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

const thermoddem = 'PHREEQC_ThermoddemV1.10_15Dec2020.dat';

/** The line of limewater strength against the computed solubility, over its range of 15 to 35 °C. */
export function portlanditeChecks(): Check[] {
  return readTable('portlandite_phreeqc.csv')
    .filter((row) => row.text('phreeqc_database') === thermoddem)
    .filter((row) => row.number('temperature_degC') >= 15 && row.number('temperature_degC') <= 35)
    .map((row) => {
      const tempC = row.number('temperature_degC');
      const gPerL =
        row.number('CaOH2_solubility_[g_per_100g_water]') * 10 * row.number('density_[kg_L-1]');
      return {
        id: `portlandite/${tempC}C`,
        quantity: 'saturated limewater',
        source: 'PHREEQC 3 with Thermoddem (portlandite_phreeqc.csv)',
        howVerified: 'computed',
        expected: gPerL,
        got: limewaterSaturationGPerL(tempC),
        tolerance: gPerL * 0.03,
        unit: 'g/L',
      };
    });
}
