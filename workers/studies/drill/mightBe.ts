import type { Scenario } from '../../../shared/scenario/schema';
import { spreadKinds, usualSpreads, type SpreadId } from '../../../shared/verdict/spreads';
import { easedAir, isPowerCut, shortOfAir } from './airEnds';
import { memberOf, type Draws } from './member';

/** A tank that the keeper's might be, and how much of the air moved by hand reaches its water. */
export interface MightBe {
  readonly scenario: Scenario;
  readonly airShare: number;
}

const draws = (own: Partial<Draws>): Draws => ({
  ...(Object.fromEntries(spreadKinds.map(({ id }) => [id, 0])) as Draws),
  ...own,
});

/** Everything that hurries a failure off by a standard deviation at once: a corner, no likely tank. */
const HURRIED: Partial<Record<SpreadId, number>> = { volume: -1, kLa: -1, pump: 1, strength: 1 };
const SLOWED: Partial<Record<SpreadId, number>> = { volume: 1, kLa: 1, pump: -1, strength: -1 };

/**
 * The tank as it is set, then the ends of what it may be: without power its gas exchange and its
 * breathing, otherwise its volume, gas exchange, pump and strength. Air moved by hand is reckoned
 * with half of what its estimate says where the air is short.
 */
export function mightBe(scenario: Scenario): readonly MightBe[] {
  const isCut = scenario.faults.some(isPowerCut);
  const isOther = scenario.faults.some((fault) => !isPowerCut(fault));
  const corner = (own: Partial<Draws>): MightBe => ({
    scenario: memberOf(scenario, usualSpreads, draws(own)),
    airShare: 1,
  });
  return [
    { scenario, airShare: 1 },
    ...(isCut
      ? [
          { scenario: shortOfAir(scenario), airShare: 0.5 },
          { scenario: easedAir(scenario), airShare: 1 },
        ]
      : []),
    ...(isOther ? [corner(HURRIED), corner(SLOWED)] : []),
  ];
}
