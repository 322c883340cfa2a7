import { MOST_ADDITIONS, type Scenario } from './schema';

type Addition = Scenario['additions'][number];

/**
 * A plan as it may be kept: what would be poured in after its end is left out, and where more is
 * poured in than a plan may hold, it ends on the day before the first that has no room.
 */
export function keepable(scenario: Scenario): Scenario {
  const { start, days } = scenario;
  const atH = ({ day, hour }: Addition) => (day - 1) * 24 + hour - start.clockHour;
  const until = (most: number) => scenario.additions.filter((one) => atH(one) <= most * 24);
  const within = until(days);
  const first = within.toSorted((a, b) => atH(a) - atH(b))[MOST_ADDITIONS];
  if (!first) {
    return within.length < scenario.additions.length
      ? { ...scenario, additions: within }
      : scenario;
  }
  const ends = Math.ceil(atH(first) / 24) - 1;
  return { ...scenario, days: ends, additions: until(ends) };
}
