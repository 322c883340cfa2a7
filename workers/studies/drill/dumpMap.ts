import { quantile } from 'd3-array';
import type { Scenario } from '../../../shared/scenario/schema';
import { watchedLines } from '../../../shared/verdict/lines';
import type { Spreads } from '../../../shared/verdict/spreads';
import { TrialRun } from '../../engine/trialRun';
import { usualOptions } from '../../engine/simulation';
import { memberOptions } from './memberResult';
import { dumpAt, dumpOfMember, withLever } from './dump';

export interface MapQuestion {
  readonly scenario: Scenario;
  readonly hour: number;
  readonly reservoirsL: readonly number[];
  readonly strengthsGPerL: readonly number[];
  readonly share: number;
  readonly members: number;
  readonly seed: number;
  readonly spreads: Spreads;
}

/** The highest pH that the stated share of tanks stays below, for one reservoir and one strength. */
export function peakPh(question: MapQuestion, reservoirL: number, gramsPerL: number): number {
  const { scenario, hour, share, members, seed, spreads } = question;
  const plan = withLever(
    withLever(scenario, 'reservoirL', reservoirL),
    'gramsPerL',
    Math.max(0, gramsPerL),
  );
  const options = memberOptions(dumpAt(plan, hour), usualOptions);
  const peaks = Array.from({ length: members }, (_, index) => {
    const dump = dumpOfMember(plan, hour, undefined, seed, index, spreads);
    const lines = watchedLines(dump).filter(({ id }) => id === 'phHigh');
    const trial = new TrialRun(dump, options, { lines, fromH: 0 });
    trial.advance(Infinity);
    return trial.worst[0]!.value;
  });
  return quantile(peaks, share)!;
}

/** One row of the map: every reservoir at one strength. `pause` lets messages in between two. */
export async function mapRow(
  question: MapQuestion,
  row: number,
  pause: () => Promise<boolean>,
): Promise<number[] | undefined> {
  const peaks: number[] = [];
  for (const litres of question.reservoirsL) {
    peaks.push(peakPh(question, litres, question.strengthsGPerL[row]!));
    if (!(await pause())) return undefined;
  }
  return peaks;
}
