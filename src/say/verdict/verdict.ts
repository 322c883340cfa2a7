import type { Scenario } from '../../../shared/scenario/schema';
import { usualDisplay, type DisplayUnits } from '../../../shared/units/display';
import type { Outcome } from '../../../shared/verdict/outcome';
import { verdictOf, type Verdict } from '../../../shared/verdict/verdict';
import { headlineOf } from './headline';
import { reasonsOf } from './reasons';

/** A verdict in the reader's words: the answer first, its reasons after. */
export interface ToldVerdict extends Verdict {
  readonly headline: string;
  readonly details: readonly string[];
}

/** A verdict that was found elsewhere, in the reader's words and units. */
export const toldVerdict = (
  verdict: Verdict,
  scenario: Scenario,
  display: DisplayUnits = usualDisplay,
): ToldVerdict => ({
  ...verdict,
  headline: headlineOf(verdict, scenario, display),
  details: reasonsOf(verdict, scenario, display),
});

/** What a trial says against the keeper's limits, in the reader's words and units. */
export const tellVerdict = (
  scenario: Scenario,
  outcome: Outcome,
  display: DisplayUnits = usualDisplay,
): ToldVerdict => toldVerdict(verdictOf(scenario, outcome), scenario, display);
