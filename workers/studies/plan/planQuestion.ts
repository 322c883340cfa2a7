import { withNewestWater } from '../../../shared/log/newest';
import type { Reading } from '../../../shared/log/reading';
import type { Kit } from '../../../shared/recipe/kit';
import type { PairNames } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { settle } from '../../engine/settle';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import type { LogAnswer, Unanswered } from '../answerLog';
import type { Open } from './onTarget';
import type { PlanQuestion } from './threePlans';

/** What the keeper wants of a plan, and measures with. */
export interface Wanted {
  readonly targetDkh: number;
  readonly kit?: Kit;
  /** What new pumps are to be called. */
  readonly pairNames?: PairNames;
  /** The bottles of a pair are turned each by itself. */
  readonly unlinked?: boolean;
}

/** What a log says, as far as a plan asks for it. */
export type Known = Pick<LogAnswer, 'now' | 'useNow' | 'habits'> & {
  readonly fit: { readonly now: Open; readonly endH: number };
};

/** A use that no reading tells is known to a fifth at best: common practice. */
export const TYPED_SHARE = 0.2;
const NO_KIT: Kit = { scoopG: 0, pumpMlPerMin: 0 };

/**
 * What plans are asked from what a log says; where it says nothing yet, from the plan's own use and the newest water that was read.
 */
export function planQuestion(
  plan: Scenario,
  readings: readonly Reading[],
  answer: Known | Unanswered | undefined,
  { targetDkh, kit = NO_KIT, pairNames, unlinked }: Wanted,
  options: SimulationOptions = usualOptions,
): PlanQuestion {
  const wanted = { targetDkh, kit, ...(pairNames && { pairNames }), ...(unlinked && { unlinked }) };
  if (answer && 'useNow' in answer) {
    const giveOrTakeDkhPerDay = 2 * answer.useNow.standardErrorDkhPerDay;
    const { now, fit, habits } = answer;
    const byHand = { doses: habits.doses, fromH: Math.floor(fit.endH) };
    return { ...wanted, now, giveOrTakeDkhPerDay, open: fit.now, byHand };
  }
  // The use was typed for the water that the plan begins with, whatever has been read since.
  const { omegaReference } = settle(plan, options);
  const newest = withNewestWater(plan, readings);
  const now = { ...newest, additions: [], start: { ...newest.start, omegaReference } };
  return { ...wanted, now, giveOrTakeDkhPerDay: TYPED_SHARE * now.corals.useDkhPerDay };
}
