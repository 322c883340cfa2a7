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
import { settling } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import { inSlices } from '../../engine/inSlices';
import { DrillRun, runDrill } from './drillRun';
import { shifted } from './shifted';

/** Chalk that takes less than this is not worth a second answer, dKH. */
const LEAST_CHALK_DKH = 0.02;
/** Peaks nearer than a probe can tell are the same. */
const SAME_PH = 0.02;
const EVERY_H = 3;

const otherEnd = (scenario: Scenario, outcome: DrillOutcome): OtherEnd => ({
  lines: outcome.lines,
  emptyH: emptyFrom(outcome, firstFaultH(scenario)),
});

const chalkDkh = ({ trace }: DrillOutcome): number =>
  trace.ledger
    .filter(({ role }) => role === 'chalk')
    .reduce((sum, { id }) => sum - readLedger(trace, id).at(-1)!, 0);

const lasts = ({ kind }: Scenario['faults'][number]): boolean => faultKinds[kind].lasts;

/** The same failure at every third hour of the day: the hour at which pH goes highest. */
async function worstStart(
  scenario: Scenario,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<{ clockHour: number; peakPh: number } | undefined> {
  let worst: { clockHour: number; peakPh: number } | undefined;
  for (let later = 0; later < 24; later += EVERY_H) {
    const moved = shifted(scenario, later);
    // A failure moved by most of a day is followed as long as it was.
    const { lines } = runDrill({ ...moved, days: scenario.days + later / 24 }, options);
    const peakPh = lineOf(lines, 'phHigh').worst;
    const { clockHour } = scenario.start;
    const hour = (clockHour + firstFaultH(moved)) % 24;
    if (!worst || peakPh > worst.peakPh) worst = { clockHour: hour, peakPh };
    if (!(await pause())) return undefined;
  }
  return worst;
}

/**
 * A drill and the ends of what it may be. The failure as set, without chalk, leads; then chalk at
 * once, nobody noticing, and the worst hour of the day. `pause` lets messages in between two runs
 * and says whether the answer is still wanted.
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
  const chalked = runDrill(withChalk(asked), options);
  if (!(await pause())) return undefined;
  const faults = scenario.faults.map((fault) =>
    lasts(fault) ? { ...fault, hours: scenario.days * 24 } : fault,
  );
  const leftAlone = scenario.faults.some(lasts)
    ? otherEnd(scenario, runDrill({ ...scenario, faults }, options))
    : undefined;
  if (!(await pause())) return undefined;
  const worst = await worstStart(scenario, options, pause);
  if (!worst) return undefined;
  const isWorse = worst.peakPh > lineOf(outcome.lines, 'phHigh').worst + SAME_PH;
  return {
    outcome,
    leftAlone,
    chalk: chalkDkh(chalked) > LEAST_CHALK_DKH ? otherEnd(scenario, chalked) : undefined,
    worst: isWorse ? worst : undefined,
  };
}
