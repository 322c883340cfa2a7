import type { Scenario } from '../../shared/scenario/schema';
import { columns } from '../../shared/trace/columns';
import { readColumn } from '../../shared/trace/trace';
import { passedAnyway } from '../../shared/verdict/anyway';
import { drillSentences } from '../say/drill/drillSentences';
import { firstFaultH, type DrillAnswer, type OtherEnd } from '../../shared/verdict/drillOutcome';
import type { Line } from '../../shared/verdict/lines';
import type { Change } from '../../shared/verdict/wantedChange';
import type { Outcome } from '../../shared/verdict/outcome';
import { timelineOf } from '../say/drill/timeline';
import { stoppedSentence } from '../say/verdict/stopped';
import type { ToldVerdict } from '../say/verdict/verdict';
import type { EnsembleSummary, LineSummary } from '../../workers/studies/drill/ensembleSummary';
import { lineJson, named } from './lineJson';

const otherEnd = (end: OtherEnd | undefined) =>
  end && { lines: end.lines.map(lineJson), reservoirEmptyH: end.emptyH };

/** A drill: the failure as it is set leads, without chalk; the other ends beside it. */
const drillJson = (scenario: Scenario, answer: DrillAnswer) => ({
  says: drillSentences(answer, scenario),
  firstFaultH: firstFaultH(scenario),
  lines: answer.outcome.lines.map(lineJson),
  passedWithoutFailureToo: passedAnyway(answer.outcome.lines, answer.undisturbed).map(
    ({ id }) => id,
  ),
  timeline: timelineOf(scenario, answer).map(({ timeH, text }) => ({ timeH, text })),
  switchings: answer.outcome.switchings,
  chalkAtOnce: otherEnd(answer.chalk),
  noAirAtAll: otherEnd(answer.closed),
  oxygenShortSoonest: answer.soonest,
  leftAlone: otherEnd(answer.leftAlone),
  worstHour: answer.worst && {
    clockHour: answer.worst.clockHour,
    peakPhNbs: answer.worst.peakPh,
  },
});

const memberLine = ({ id, quantity, trouble, limit }: Line, summary: LineSummary) => ({
  ...{ line: id, quantity, trouble, ...named('limit', quantity, limit) },
  ...{ passedShare: summary.share, afterH: summary.afterH, outsideH: summary.outsideH },
  ...named('worst', quantity, summary.worst),
});

/** Quantiles of 5, 50 and 95 % of so many tanks that might be this one. */
const ensembleJson = (lines: readonly Line[], seed: number, summary: EnsembleSummary) => ({
  ...{ members: summary.members, seed },
  lines: lines.map((line, i) => memberLine(line, summary.lines[i]!)),
  reservoirEmptyShare: summary.dryShare,
  reservoirEmptyAfterH: summary.dryAfterH,
});

/** What a trial is told from. */
export interface Told {
  readonly scenario: Scenario;
  readonly outcome: Outcome;
  readonly verdict: ToldVerdict;
  /** The first change that the verdict asks for, run and no worse. */
  readonly change: Change;
  readonly drill: DrillAnswer | undefined;
  readonly ensemble: { readonly seed: number; readonly summary: EnsembleSummary } | undefined;
}

/** A trial for other programs: every number has its unit in its name, hours are the trial's. */
export const trialJson = ({ scenario, outcome, verdict, change, drill, ensemble }: Told) => ({
  ...{ type: 'paper-reef/verdict', title: scenario.title, question: scenario.question },
  hours: outcome.trace.rows - 1,
  verdict: {
    insideLimits: verdict.insideLimits,
    ...{ headline: verdict.headline, details: verdict.details },
    firstChange: change,
  },
  settledCycle: outcome.settled,
  stopped: outcome.stopped && {
    timeH: outcome.stopped.timeH,
    reason: stoppedSentence(outcome.stopped),
  },
  lines: outcome.lines.map(lineJson),
  crossings: outcome.crossings.map(({ limit, timeH, into }) => ({ line: limit, timeH, into })),
  end: Object.fromEntries(
    columns.map(({ id }) => [id, readColumn(outcome.trace, id).at(-1)!] as const),
  ),
  drill: drill && drillJson(scenario, drill),
  ensemble: ensemble && ensembleJson(outcome.lines, ensemble.seed, ensemble.summary),
});
