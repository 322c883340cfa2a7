import { quantile } from 'd3-array';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions } from '../../engine/simulation';
import { memberOptions } from './memberResult';
import type { Spreads } from '../../../shared/verdict/spreads';
import { dumpAt, dumpOfMember, excess, levers, withLever, type Lever } from './dump';

/** A question put backwards: how large may it be? */
export interface DesignQuestion {
  readonly scenario: Scenario;
  readonly lever: Lever;
  /** Ids of the lines that are to be kept. */
  readonly lines: readonly string[];
  /** Share of the tanks that must keep them. */
  readonly share: number;
  readonly members: number;
  readonly seed: number;
  readonly spreads: Spreads;
  /** Hour of the day at which the dump begins. */
  readonly hour: number;
}

/** The excess that the stated share of tanks stays below, at one value of the lever. */
export function excessAt(question: DesignQuestion, value: number): number {
  const { scenario, lever, lines, share, members, seed, spreads, hour } = question;
  const plan = withLever(scenario, lever, value);
  const options = memberOptions(dumpAt(plan, hour, lever), usualOptions);
  const found = Array.from({ length: members }, (_, index) =>
    excess(dumpOfMember(plan, hour, lever, seed, index, spreads), lines, options),
  );
  return quantile(found, share)!;
}

export interface Design {
  /** The largest value that keeps the lines; undefined when not even the smallest does. */
  readonly largest: number | undefined;
  /** Whether everything that was tried keeps them. */
  readonly unlimited: boolean;
  readonly tried: readonly { readonly value: number; readonly excess: number }[];
}

/** Searched from and to: a thousandth of the tank to half of it, and what pumps and bags can. */
export function rangeOf({ lever, scenario }: DesignQuestion): readonly [number, number] {
  const { volumeL } = scenario.tank;
  const { min, max } = quantityAt(levers[lever]).quantity;
  const ranges: Record<Lever, readonly [number, number]> = {
    reservoirL: [volumeL / 1000, volumeL / 2],
    gramsPerL: [0.01, scenario.topOff.additive === 'calciumHydroxide' ? 1.7 : 20],
    pumpLPerH: [volumeL / 10000, volumeL / 3],
    runLimitMinPerH: [0.5, 60],
  };
  const [low, high] = ranges[lever];
  return [Math.max(min, low), Math.min(max, high)];
}

/** Between two values this close (as a ratio) the search ends. */
const CLOSE = 1.003;

/**
 * Bisection on the logarithm of the lever: worse with every litre and gram, since chalk is off and
 * every value is tried on the same tanks. A slower pump may carry a dump into the next afternoon,
 * when pH is high anyway: there the answer is the first found, not proven the largest. `pause` lets messages in between two values.
 */
export async function largestKept(
  question: DesignQuestion,
  pause: (done: number) => Promise<boolean>,
): Promise<Design | undefined> {
  let [low, high] = rangeOf(question);
  const steps = Math.ceil(Math.log2(Math.log(high / low) / Math.log(CLOSE))) + 2;
  const tried: { value: number; excess: number }[] = [];
  const tries = async (value: number) => {
    const found = excessAt(question, value);
    tried.push({ value, excess: found });
    return (await pause(tried.length / steps)) ? found : undefined;
  };
  const atHigh = await tries(high);
  if (atHigh === undefined) return undefined;
  if (atHigh <= 0) return { largest: high, unlimited: true, tried };
  const atLow = await tries(low);
  if (atLow === undefined) return undefined;
  if (atLow > 0) return { largest: undefined, unlimited: false, tried };
  while (high / low > CLOSE) {
    const middle = Math.sqrt(low * high);
    const found = await tries(middle);
    if (found === undefined) return undefined;
    if (found <= 0) low = middle;
    else high = middle;
  }
  return { largest: low, unlimited: false, tried };
}
