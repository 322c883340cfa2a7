import type { Scenario } from '../../../shared/scenario/schema';

export const withUse = (scenario: Scenario, useDkhPerDay: number): Scenario => ({
  ...scenario,
  corals: { ...scenario.corals, measuredAs: 'use', useDkhPerDay: Math.max(0, useDkhPerDay) },
});

/** A use, and the lowest and the highest that is possible, dKH/day. */
export const usesWithin = (useDkhPerDay: number, giveOrTakeDkhPerDay: number): readonly number[] =>
  [0, -1, 1].map((side) => Math.max(0, useDkhPerDay + side * giveOrTakeDkhPerDay));

/** A plan at the consumption it was made for, at the lowest and at the highest that is possible. */
export type UseEnds = (scenario: Scenario, giveOrTakeDkhPerDay: number) => readonly Scenario[];

export const useEnds =
  (at: (scenario: Scenario, useDkhPerDay: number) => Scenario): UseEnds =>
  (scenario, giveOrTakeDkhPerDay) =>
    giveOrTakeDkhPerDay === 0
      ? [scenario]
      : usesWithin(scenario.corals.useDkhPerDay, giveOrTakeDkhPerDay).map((use) =>
          at(scenario, use),
        );

/** From water that stands where each use lets it. */
export const endsOf = useEnds(withUse);
