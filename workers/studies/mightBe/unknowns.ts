import type { Scenario } from '../../../shared/scenario/schema';
import { doubtsOf } from '../fit/doubts';
import { withUse } from '../plan/useEnds';

/** Something of a plan that nobody knows exactly: the same plan with it so many σ more, or less. */
export type Aside = (scenario: Scenario, sigmas: number) => Scenario;

/** Use that was typed is right to a fifth at two σ: common practice. */
const USE_SHARE = 0.1;
/** A plain description of the aeration is trusted to a factor of two: common practice. */
const KLA_TIMES = 2;

const use: Aside = (scenario, sigmas) => {
  const { corals } = scenario;
  const times = 1 + USE_SHARE * sigmas;
  return corals.measuredAs === 'use'
    ? withUse(scenario, corals.useDkhPerDay * times)
    : { ...scenario, corals: { ...corals, areaM2: corals.areaM2 * times } };
};

const gas: Aside = ({ gas: own, ...rest }, sigmas) => ({
  ...rest,
  gas: { ...own, kLaPerH: own.kLaPerH * KLA_TIMES ** sigmas },
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
