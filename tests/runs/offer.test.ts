import { describe, expect, it } from 'vitest';
import { firstChange } from '../../workers/studies/firstChange';
import { patience } from '../laws/size';
import { quietTank } from './quietTank';

type Change = Parameters<typeof quietTank>[0];

const offerOf = (change: Change) => firstChange(quietTank(change)).change;
const limewater = { reservoirL: 40, additive: 'calciumHydroxide', refillEveryDays: 2 } as const;

describe('the first change a verdict offers', () => {
  it(
    'is a strength that covers the use when nothing is in the mix yet, and then nothing binds',
    () => {
      const corals = { useDkhPerDay: 0.8 };
      const evaporation = { litresPerDay: 4 };
      const { mixGPerL } = offerOf({
        corals,
        evaporation,
        topOff: { ...limewater, gramsPerL: 0 },
      });
      expect(mixGPerL).toBeGreaterThan(0.5);
      const scenario = quietTank({
        corals,
        evaporation,
        topOff: { ...limewater, gramsPerL: mixGPerL! },
      });
      const { verdict, change } = firstChange(scenario);
      const cap = verdict.limewater;
      expect(cap!.covered).toBeGreaterThan(0.95);
      expect(cap!.covered).toBeLessThan(1.07);
      expect(change).toEqual({});
    },
    patience,
  );

  it(
    'is a refill in time when the reservoir runs dry, and then it does not',
    () => {
      const topOff = { reservoirL: 13, refillEveryDays: 6 };
      const evaporation = { litresPerDay: 4 };
      const { refillEveryDays } = offerOf({ days: 8, evaporation, topOff });
      expect(refillEveryDays).toBe(3);
      expect(offerOf({ days: 8, evaporation, topOff: { ...topOff, refillEveryDays: 3 } })).toEqual(
        {},
      );
    },
    patience,
  );
});
