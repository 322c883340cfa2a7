import type { Scenario } from '../scenario/schema';
import { firstFaultH, type DrillAnswer } from './drillOutcome';
import { lineOf, type LineResult } from './lineResult';

/** How long there is until oxygen passes one line, h from when the first thing broke. */
export interface OxygenLeft {
  readonly limitMgPerL: number;
  /** With no air at the surface at all, and more breathed: the short end. */
  readonly soonestH: number | undefined;
  /** With the gas exchange that is set, and less breathed; undefined when the line is kept. */
  readonly afterH: number | undefined;
}

const OXYGEN_LINES = ['oxygenLow', 'oxygenHarm'] as const;

/** Both lines of oxygen, the higher first; those that were passed before are left out. */
export function oxygenLeft(answer: DrillAnswer, scenario: Scenario): readonly OxygenLeft[] {
  const { outcome, closed, eased } = answer;
  const fromH = firstFaultH(scenario);
  const after = ({ firstH }: LineResult) => (firstH === undefined ? undefined : firstH - fromH);
  return OXYGEN_LINES.map((id) => lineOf(outcome.lines, id))
    .filter(({ already }) => !already)
    .map((line) => {
      const afterH = after(lineOf((eased ?? outcome).lines, line.id));
      const soonestH = closed ? after(lineOf(closed.lines, line.id)) : afterH;
      return { limitMgPerL: line.limit, afterH, soonestH };
    })
    .sort((a, b) => b.limitMgPerL - a.limitMgPerL);
}

/** Nearer than this nobody can tell two moments apart, h. */
const SAME_H = 1 / 30;

/** When a line of oxygen is passed at the soonest, h of the trial; undefined where that is no sooner than as it is set. */
export function soonestOxygenH(
  { id, quantity, firstH }: LineResult,
  { closed }: Pick<DrillAnswer, 'closed'>,
): number | undefined {
  const soonestH = closed && quantity === 'oxygen' ? lineOf(closed.lines, id).firstH : undefined;
  return soonestH !== undefined && soonestH < (firstH ?? Infinity) - SAME_H ? soonestH : undefined;
}

/** Whether a failure stops the air: then oxygen leads what is told. */
export const stopsAir = ({ faults }: Scenario): boolean =>
  faults.some(({ kind }) => kind === 'powerCut');
