import { meqPerLFromDkh } from '../../../../shared/seawater';
import { additives } from '../../../../shared/species/additives';
import type { SimulationOptions } from '../../../../workers/engine/simulation';
import { usualOptions } from '../../../../workers/engine/simulation';
import type { Check } from '../../../reference/check';
import { onlyTank } from '../onlyTank';

const volumeL = 300;
const startDkh = 8;
/** 3 % of the volume as limewater. */
const dosedDkh = 11.42;

export interface Chalk {
  readonly mode: 'guarded' | 'enabled' | 'off';
  readonly law?: 'burtonWalter1987' | 'zhongMucci1989';
  readonly seedG?: number;
  readonly crystalM2PerG?: number;
  readonly wettedM2Per100L?: number;
}

/** Limewater poured in at hour 1, all at once. */
export function limedTank(
  chalk: Chalk,
  toDkh = dosedDkh,
  options: SimulationOptions = usualOptions,
) {
  const limeMol = (meqPerLFromDkh(toDkh - startDkh) * volumeL) / 2000;
  const grams = limeMol * additives.calciumHydroxide.molarMassG;
  return onlyTank(
    {
      days: 10,
      tank: { volumeL, alkalinityDkh: startDkh, calciumMgPerL: 422 },
      precipitation: { aboveOmega: 5, ...chalk },
      additions: [{ day: 1, hour: 1, additive: 'calciumHydroxide', grams }],
    },
    options,
  );
}

export const runawayChecks = (): Check[] =>
  (['burtonWalter1987', 'zhongMucci1989'] as const).map((law) => {
    const tank = limedTank({ mode: 'enabled', law });
    tank.advanceTo(240);
    return {
      id: `runaway/${law}`,
      quantity: 'alkalinity left when chalk has stopped falling out near Ω 5',
      source: '1050 µmol/kg of CaCO3 out of 11.42 dKH, PyCO2SYS 1.8.3.4; Moras et al. 2022',
      howVerified: 'computed',
      ...{ expected: 5.4, got: tank.view.alkalinityDkh, tolerance: 0.15, unit: 'dKH' },
    };
  });
