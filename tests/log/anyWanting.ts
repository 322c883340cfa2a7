import fc from 'fast-check';

import { parseScenarioText } from '../../shared/scenario/parse';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf, scenarioText } from '../../shared/scenario/write';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import type { TankState } from '../../workers/engine/tankState';

export const kit = { scoopG: 0, pumpMlPerMin: 0 };
const tenth = (low: number, high: number) =>
  fc.integer({ min: low * 10, max: high * 10 }).map((n) => n / 10);

/** A tank in want of a plan: sizes, appetites and airs that keepers have. */
export const anyTank = fc.record({
  volumeL: fc.integer({ min: 60, max: 1200 }),
  use: tenth(0.2, 2.8),
  share: tenth(0.5, 2),
  kLa: tenth(0.6, 4),
  tempC: tenth(24, 27),
  target: tenth(8.4, 10),
  now: tenth(6.2, 11.8),
  giveOrTake: fc.integer({ min: 2, max: 25 }).map((n) => n / 100),
});
type AnyTank = typeof anyTank extends fc.Arbitrary<infer T> ? T : never;

export const tankOf = ({ volumeL, use, share, kLa, tempC, now }: AnyTank) =>
  scenarioOf({
    type: 'paper-reef/scenario',
    version: 4,
    title: 'a tank in the sail loft at Wexcombe Hythe',
    days: 28,
    tank: { volumeL, tempC, alkalinityDkh: now },
    corals: { useDkhPerDay: use, growthPercentPerDay: 0.2 },
    evaporation: { litresPerDay: (volumeL * share) / 100 },
    gas: { kLaPerH: kLa },
    limits: { alkalinityLowDkh: 7.5, alkalinityHighDkh: 11 },
  });

/** Through the file's text, as somebody else would run it; from water that another plan has left. */
export const replayed = (scenario: Scenario, from?: TankState) => {
  const parsed = parseScenarioText(scenarioText(scenario));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return run(parsed.scenario, usualOptions, from);
};
