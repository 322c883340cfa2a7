import { additives } from '../../../../shared/species/additives';
import type { Check } from '../../../reference/check';
import { equivalents, onlyTank } from '../onlyTank';

const MOL = 0.1;

/** A tenth of a mole of a calcium salt poured in at hour 1: equivalents at once, and later. */
function gained(additive: 'calciumAcetate' | 'calciumFormate') {
  const grams = MOL * additives[additive].molarMassG;
  const tank = onlyTank({
    days: 5,
    filter: { oxidationPerH: 1 },
    additions: [{ day: 1, hour: 1, additive, grams }],
  });
  const start = equivalents(tank);
  tank.advanceTo(1);
  const atOnce = equivalents(tank) - start;
  tank.advanceTo(72);
  return { atOnce: atOnce / (2 * MOL), later: (equivalents(tank) - start) / (2 * MOL) };
}

export const organicSaltChecks = (): Check[] =>
  (['calciumAcetate', 'calciumFormate'] as const).flatMap((additive) => {
    const { atOnce, later } = gained(additive);
    const origin = {
      id: `organic-salt/${additive}`,
      source: 'Wolf-Gladrow et al. 2007',
      howVerified: 'computed',
      ...{ tolerance: 1e-6, unit: 'eq per mole of anion' },
    } as const;
    return [
      { ...origin, quantity: 'alkalinity as it dissolves', expected: 0, got: atOnce },
      { ...origin, quantity: 'alkalinity once it is oxidised', expected: 1, got: later },
    ];
  });
