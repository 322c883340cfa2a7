import { readColumn } from '../../../shared/trace/trace';
import { run } from '../../../workers/engine/run';
import type { Check } from '../../reference/check';
import { quietTank } from '../quietTank';

export interface Consumer {
  readonly useDkhPerDay: number;
  readonly omegaLaw: 'gentle' | 'proportional';
  readonly lightDarkRatio: number;
  readonly alkalinityDkh: number;
}

/** Fall of alkalinity and calcium over the first day; algae at their usual rate, no food, no dose. */
export function firstDayFall({ alkalinityDkh, ...corals }: Consumer) {
  const { trace } = run(
    quietTank({
      tank: { alkalinityDkh },
      corals,
      photosynthesis: { grossMmolPerLPerDay: 0.5 },
      evaporation: { litresPerDay: 3 },
      topOff: { reservoirL: 20, deadBandL: 0.05 },
    }),
  );
  const fall = (id: 'alkalinity_dkh' | 'calcium_mg_l') => {
    const values = readColumn(trace, id);
    return values[0]! - values[24]!;
  };
  return { dkh: fall('alkalinity_dkh'), calciumMgPerL: fall('calcium_mg_l') };
}

const consumers: Consumer[] = [0.1, 0.5, 1, 2].flatMap((useDkhPerDay) =>
  (['gentle', 'proportional'] as const).flatMap((omegaLaw) =>
    [1, 3, 10].map((lightDarkRatio) => ({
      ...{ useDkhPerDay, omegaLaw, lightDarkRatio, alkalinityDkh: 8 },
    })),
  ),
);

export const firstDayChecks = (): Check[] =>
  consumers.map((consumer) => {
    const { useDkhPerDay, omegaLaw, lightDarkRatio } = consumer;
    return {
      id: `first-day/${useDkhPerDay} dKH/${omegaLaw}/light ${lightDarkRatio}`,
      quantity: 'fall of alkalinity on the first day, undosed',
      source: 'the use that was typed',
      howVerified: 'computed',
      expected: useDkhPerDay,
      got: firstDayFall(consumer).dkh,
      tolerance: 0.02,
      unit: 'dKH',
    };
  });
