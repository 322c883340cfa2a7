import type { Scenario } from '../../../shared/scenario/schema';
import { doubtsOf } from '../fit/doubts';
import { LN_KLA_SIGMA } from '../fit/parameters';
import { TYPED_SHARE } from '../plan/planQuestion';
import { withUse } from '../plan/useEnds';

/** Something of a plan that nobody knows exactly: the same plan with it so many σ more, or less. */
export type Aside = (scenario: Scenario, sigmas: number) => Scenario;

/** What is typed of the use is known to at two σ, one of them. */
const USE_SHARE = TYPED_SHARE / 2;

const use: Aside = (scenario, sigmas) => {
  const { corals } = scenario;
  const times = 1 + USE_SHARE * sigmas;
  return corals.measuredAs === 'use'
    ? withUse(scenario, corals.useDkhPerDay * times)
    : { ...scenario, corals: { ...corals, areaM2: corals.areaM2 * times } };
};

const gas: Aside = ({ gas: own, ...rest }, sigmas) => ({
  ...rest,
  gas: { ...own, kLaPerH: own.kLaPerH * Math.exp(LN_KLA_SIGMA * sigmas) },
});

/** What a plan rests on and nobody knows exactly: the use first, since most comes of it. */
export const unknownsOf = (scenario: Scenario): readonly Aside[] => [
  use,
  ...doubtsOf(scenario, scenario.additions.length > 0).map(
    ({ sigma, more }): Aside =>
      (one, sigmas) =>
        more(one, sigma * sigmas),
  ),
  gas,
];
