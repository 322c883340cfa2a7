import { withChalk, withoutChalk } from '../../../shared/scenario/chalk';
import { faultKinds } from '../../../shared/faults/faultKinds';
import type { Scenario } from '../../../shared/scenario/schema';
import { readLedger } from '../../../shared/trace/trace';
import {
  emptyFrom,
  firstFaultH,
  type DrillAnswer,
  type DrillOutcome,
  type OtherEnd,
} from '../../../shared/verdict/drillOutcome';
import { lineOf } from '../../../shared/verdict/lineResult';
import { settling, type Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import { inSlices } from '../../engine/inSlices';
import { easedAir, isPowerCut, shortOfAir } from './airEnds';
import { DrillRun, runDrill } from './drillRun';
import { courseOf, undisturbed } from './passing';
import { shifted } from './shifted';

/** Chalk that takes less than this is not worth a second answer, dKH. */
const LEAST_CHALK_DKH = 0.02;
/** Peaks nearer than a probe can tell are the same. */
const SAME_PH = 0.02;
/** Hours by the clock at which it is tried: the same whatever hour was asked, so that one failure has one worst. */
const TRIED_HOURS = [2, 5, 8, 11, 14, 17, 20, 23];
/** Times nearer than anyone can act on are the same. */
const SAME_H = 5 / 60;

const otherEnd = (scenario: Scenario, outcome: DrillOutcome): OtherEnd => ({
  lines: outcome.lines,
  emptyH: emptyFrom(outcome, firstFaultH(scenario)),
});

const chalkDkh = ({ trace }: DrillOutcome): number =>
  trace.ledger
    .filter(({ role }) => role === 'chalk')
    .reduce((sum, { id }) => sum - readLedger(trace, id).at(-1)!, 0);

const lasts = ({ kind }: Scenario['faults'][number]): boolean => faultKinds[kind].lasts;

interface WorstStarts {
  readonly worst: { readonly clockHour: number; readonly peakPh: number };
  /** Undefined when oxygen is never taken below the keeper's line. */
  readonly soonest: { readonly clockHour: number; readonly afterH: number } | undefined;
}

/** Hours from the failure until oxygen is below the keeper's line; undefined when it never is. */
function oxygenAfterH({ lines }: DrillOutcome, fromH: number): number | undefined {
  const { firstH, already } = lineOf(lines, 'oxygenLow');
  return firstH === undefined || already ? undefined : firstH - fromH;
}

/**
 * The same failure at every third hour of its day of the trial, whose reservoir is as full as it was
 * asked about: the hour at which pH goes highest, and the one at which oxygen is short soonest.
 */
async function worstStarts(
  scenario: Scenario,
  start: Settled,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<WorstStarts | undefined> {
  let worst: WorstStarts['worst'] | undefined;
  let soonest: WorstStarts['soonest'];
  const { clockHour } = scenario.start;
  const askedH = firstFaultH(scenario);
  for (const hour of TRIED_HOURS) {
    const triedH = 24 * Math.floor(askedH / 24) + ((hour - clockHour + 24) % 24);
    const later = triedH - askedH;
    const moved = shifted(scenario, later);
    // A failure moved by most of a day is followed as long as it was.
    const outcome = runDrill({ ...moved, days: scenario.days + later / 24 }, options, start);
    const peakPh = lineOf(outcome.lines, 'phHigh').worst;
    if (!worst || peakPh > worst.peakPh) worst = { clockHour: hour, peakPh };
    const afterH = oxygenAfterH(outcome, firstFaultH(moved));
    if (afterH !== undefined && !(soonest && soonest.afterH <= afterH)) {
      soonest = { clockHour: hour, afterH };
    }
    if (!(await pause())) return undefined;
  }
  return worst && { worst, soonest };
}

/**
 * A drill and the ends of what it may be. The failure as set, without chalk, leads; then chalk at
 * once, nobody noticing, the ends of oxygen, and the worst hours of the day. `pause` lets
 * messages in between two runs and says whether the answer is still wanted.
 */
export async function rehearse(
  asked: Scenario,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<DrillAnswer | undefined> {
  const scenario = withoutChalk(asked);
  const start = await inSlices(settling(scenario, options), pause);
  if (!start) return undefined;
  const drill = new DrillRun(scenario, options, start);
  while (!drill.trial.done) {
    drill.trial.advance(24);
    if (!(await pause())) return undefined;
  }
  const outcome = drill.result();
  const calm = courseOf(undisturbed(scenario), options, start, firstFaultH(scenario));
  if (!(await pause())) return undefined;
  // It falls out of the same water: a day of its own, with chalk, may settle elsewhere.
  const chalked = runDrill(withChalk(asked), options, start);
  if (!(await pause())) return undefined;
  const faults = scenario.faults.map((fault) =>
    lasts(fault) ? { ...fault, endsAfterH: scenario.days * 24 } : fault,
  );
  const leftAlone = scenario.faults.some(lasts)
    ? otherEnd(scenario, runDrill({ ...scenario, faults }, options, start))
    : undefined;
  if (!(await pause())) return undefined;
  const isCut = scenario.faults.some(isPowerCut);
  const end = (tank: Scenario) => (isCut ? otherEnd(tank, runDrill(tank, options)) : undefined);
  const closed = end(shortOfAir(scenario));
  if (!(await pause())) return undefined;
  const eased = end(easedAir(scenario));
  if (!(await pause())) return undefined;
  const starts = await worstStarts(scenario, start, options, pause);
  if (!starts) return undefined;
  const { worst, soonest } = starts;
  // Short of it before anything breaks: no hour is sooner.
  const { already } = lineOf(outcome.lines, 'oxygenLow');
  const asSetH = already ? 0 : (oxygenAfterH(outcome, firstFaultH(scenario)) ?? Infinity);
  const isWorse = worst.peakPh > lineOf(outcome.lines, 'phHigh').worst + SAME_PH;
  return {
    ...{ outcome, undisturbed: calm.lines },
    leftAlone,
    closed,
    eased,
    soonest: soonest && soonest.afterH < asSetH - SAME_H ? soonest : undefined,
    chalk: chalkDkh(chalked) > LEAST_CHALK_DKH ? otherEnd(scenario, chalked) : undefined,
    worst: isWorse ? worst : undefined,
  };
}
