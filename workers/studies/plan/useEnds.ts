import type { Scenario } from '../../../shared/scenario/schema';

export const withUse = (scenario: Scenario, useDkhPerDay: number): Scenario => ({
  ...scenario,
  corals: { ...scenario.corals, measuredAs: 'use', useDkhPerDay: Math.max(0, useDkhPerDay) },
});

/** A plan at the consumption it was made for, at the lowest and at the highest that is possible. */
export const useEnds = (scenario: Scenario, giveOrTakeDkhPerDay: number): readonly Scenario[] =>
  giveOrTakeDkhPerDay === 0
    ? [scenario]
    : [0, -1, 1].map((side) =>
        withUse(scenario, scenario.corals.useDkhPerDay + side * giveOrTakeDkhPerDay),
      );
