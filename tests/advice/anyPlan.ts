import fc from 'fast-check';
import { scenarioOf } from '../../shared/scenario/write';
import type { Scenario } from '../../shared/scenario/schema';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** What a keeper may type of a tank, over the whole range that tanks have. */
export const anyTank = fc
  .record({
    volumeL: between(20, 2000),
    alkalinityDkh: between(5, 13),
    useDkhPerDay: between(0, 4),
    growthPercentPerDay: between(0, 1),
    evaporationShare: between(0.002, 0.03),
    co2Ppm: between(400, 2500),
    kLaPerH: between(0.15, 5),
    foodShare: between(0, 0.02),
    lightHours: between(6, 14),
    lowDkh: between(5, 8),
    bandDkh: between(1, 5),
  })
  .map((t): Scenario =>
    scenarioOf({
      type: 'paper-reef/scenario',
      version: 4,
      title: 'any tank',
      days: 3,
      tank: { volumeL: t.volumeL, alkalinityDkh: t.alkalinityDkh },
      corals: { useDkhPerDay: t.useDkhPerDay, growthPercentPerDay: t.growthPercentPerDay },
      evaporation: { litresPerDay: t.evaporationShare * t.volumeL },
      room: { co2Ppm: t.co2Ppm },
      gas: { kLaPerH: t.kLaPerH },
      food: { gramsPerDay: t.foodShare * t.volumeL },
      lights: { hours: t.lightHours },
      topOff: {
        reservoirL: t.volumeL * 0.08,
        pumpLPerH: t.volumeL * 0.01,
        deadBandL: Math.max(0.05, t.volumeL * 0.002),
      },
      outflows: { spareL: Math.max(0.5, t.volumeL * 0.1) },
      limits: { alkalinityLowDkh: t.lowDkh, alkalinityHighDkh: t.lowDkh + t.bandDkh },
    }),
  );
