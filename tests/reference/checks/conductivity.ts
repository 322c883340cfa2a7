import { conductivityMsPerCm, salinityFromConductivity } from '../../../shared/seawater';
import type { Check } from '../check';
import { readTable } from '../table';

export function conductivityChecks(): Check[] {
  return readTable('hydrometer.csv').flatMap((row) =>
    [20, 25].flatMap((tempC) => {
      const salinity = row.number('salinity_PSS78');
      const conductivity = row.number(`conductivity_${tempC}C_PSS78_[mS_cm-1]`);
      const origin = {
        id: `conductivity/${row.text('case_id')}/${tempC}C`,
        source: 'PSS-78 by GSW (hydrometer.csv)',
        howVerified: 'computed',
      } as const;
      return [
        {
          ...origin,
          quantity: 'conductivity',
          expected: conductivity,
          got: conductivityMsPerCm(tempC, salinity),
          tolerance: 1e-7,
          unit: 'mS/cm',
        },
        {
          ...origin,
          quantity: 'salinity from conductivity',
          expected: salinity,
          got: salinityFromConductivity(conductivity, tempC),
          tolerance: 1e-7,
          unit: '-',
        },
      ];
    }),
  );
}
