import { precipitationUmolPerM2PerH } from '../../../shared/seawater/precipitation';
import type { Check } from '../check';
import { readTable } from '../table';

const laws = [
  ['burtonWalter1987', 'BurtonWalter1987_umol_m2_h'],
  ['zhongMucci1989', 'ZhongMucci1989_25C_umol_m2_h'],
] as const;

/** To the digits printed: half of the last one. */
export const precipitationRateChecks = (): Check[] =>
  readTable('aragonite_precip_rates.csv').flatMap((row) =>
    laws
      .filter(([, column]) => row.has(column))
      .map(([law, column]): Check => {
        const [tempC, omega] = [row.number('T_C'), row.number('OmegaA')];
        return {
          id: `precipitation/${law}/${tempC} °C/Ω ${omega}`,
          quantity: 'aragonite laid down on bare solid',
          source: 'Burton & Walter 1987, Zhong & Mucci 1989 (aragonite_precip_rates.csv)',
          howVerified: 'computed',
          expected: row.number(column),
          got: precipitationUmolPerM2PerH(omega, tempC, law),
          tolerance: 0.05,
          unit: 'µmol/m²/h',
        };
      }),
  );
