import type { Scenario } from '../../../shared/scenario/schema';
import { dumpHolds } from './fullDump';
import { readColumn } from '../../../shared/trace/trace';
import { dayMeans } from '../dayMeans';
import { dailyMeans, PLAN_DAYS } from './holding';
import { oddsOnTarget, type Open } from './onTarget';
import type { LineResult } from '../../../shared/verdict/lineResult';
import { NEAR_TARGET_DKH } from '../../../shared/verdict/nearTarget';
import type { Watch } from './breaches';
import type { UseEnds } from './useEnds';

/** Why a plan is not offered. */
export type Refusal =
  /** It passes a limit too soon to be tested again before. */
  | { readonly kind: 'breach'; readonly breach: LineResult }
  /** It stops, or ends away from the target. */
  | { readonly kind: 'offTarget'; readonly endsDkh: number }
  /** Its own reservoir, going in at once, would pass what harms. */
  | { readonly kind: 'dump' };

export interface Judged {
  /** Whole days inside every limit at every consumption that the log allows. */
  readonly promisedDays: number;
  readonly refusal: Refusal | undefined;
  /** Odds that every day from the first week on is near the target with no further test; undefined where no log tells. */
  readonly onTargetOdds: number | undefined;
}

/** So long it must hold by itself: where that is less than a week, it says by when to test again. */
export const LEAST_PROMISE_DAYS = 5;

/** What a plan may promise, and why it may not be offered. */
export function judged(
  watch: Watch,
  endsOf: UseEnds,
  scenario: Scenario,
  giveOrTakeDkhPerDay: number,
  open?: Open,
  leastDays = LEAST_PROMISE_DAYS,
): Judged {
  const runs = endsOf(scenario, giveOrTakeDkhPerDay).map(watch);
  const all = runs.flatMap(({ breaches }) => breaches).toSorted((a, b) => a.firstH! - b.firstH!);
  const stopsH = runs.map(({ run }) => run.stopped?.timeH ?? PLAN_DAYS * 24);
  const insideH = Math.min(...stopsH, ...all.map(({ firstH }) => firstH!));
  const promisedDays = Math.max(0, Math.floor(insideH / 24));
  return { promisedDays, refusal: refusalOf(), onTargetOdds: open && oddsBy(open) };

  function oddsBy(log: Open): number | undefined {
    const [means, , aside] = runs.map(({ run }) =>
      dayMeans(readColumn(run.trace, 'alkalinity_dkh')),
    );
    const { tank, corals } = scenario;
    return (
      aside &&
      oddsOnTarget(
        {
          ...{ targetDkh: tank.alkalinityDkh, useDkhPerDay: corals.useDkhPerDay },
          ...{ means: means!, aside, asideDkhPerDay: giveOrTakeDkhPerDay },
        },
        log,
      )
    );
  }

  function refusalOf(): Refusal | undefined {
    const breach = all[0];
    if (promisedDays < leastDays && breach) return { kind: 'breach', breach };
    const means = dailyMeans(runs[0]!.run);
    const endsDkh = means.at(-1)!;
    if (Math.abs(endsDkh - scenario.tank.alkalinityDkh) > NEAR_TARGET_DKH || promisedDays === 0) {
      return { kind: 'offTarget', endsDkh };
    }
    const { topOff } = scenario;
    const brings = topOff.reservoirL > 0 && topOff.additive !== 'none' && topOff.gramsPerL > 0;
    return brings && !dumpHolds(scenario) ? { kind: 'dump' } : undefined;
  }
}
