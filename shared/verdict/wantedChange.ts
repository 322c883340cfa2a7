import type { Scenario } from '../scenario/schema';
import type { Trace } from '../trace/trace';
import { toDecimals } from '../units/digits';
import { limewaterStrengthFor } from './limewaterCap';
import type { Verdict } from './verdict';

/** One change of what runs already: another strength of the mix, or days between refills. */
export interface Change {
  readonly mixGPerL?: number;
  /** So much of the mix may stand there, L, where more of it at once would do harm. */
  readonly reservoirL?: number;
  readonly refillEveryDays?: number;
}

/** The one change that a verdict asks for first, not run yet. */
export function wantedChange(scenario: Scenario, trace: Trace, verdict: Verdict): Change {
  const { limewater, dry } = verdict;
  if (scenario.faults.length > 0) return {};
  // With an empty reservoir nothing else can be blamed before it is refilled.
  if (dry) return dry.lastsDays >= 1 ? { refillEveryDays: dry.lastsDays } : {};
  const ways: readonly string[] = ['strength', 'tooMuch'];
  const wanted = isUnmixed(scenario)
    ? limewaterStrengthFor(scenario, trace)
    : limewater &&
        ways.includes(limewater.binding) &&
        limewater.wantedGPerL < limewater.saturationGPerL
      ? limewater.wantedGPerL
      : 0;
  const mixGPerL = toDecimals(wanted, 2);
  return mixGPerL > 0 ? { mixGPerL } : {};
}

const isUnmixed = ({ topOff }: Scenario): boolean =>
  topOff.additive === 'calciumHydroxide' && topOff.gramsPerL === 0 && topOff.reservoirL > 0;

/** The plan with it. */
export const changedBy = (
  scenario: Scenario,
  { mixGPerL, reservoirL, refillEveryDays }: Change,
): Scenario => ({
  ...scenario,
  topOff: {
    ...scenario.topOff,
    ...(mixGPerL !== undefined && { gramsPerL: mixGPerL }),
    ...(reservoirL !== undefined && { reservoirL }),
    ...(refillEveryDays !== undefined && { refillEveryDays }),
  },
});
