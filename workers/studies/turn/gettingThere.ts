import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import type { Carbonate } from '../../../shared/recipe/twoPart';
import type { Scenario } from '../../../shared/scenario/schema';
import { SPARE } from '../plan/holding';
import { raise } from '../plan/raise';
import { doseWhere } from '../plan/root';
import { MORNING_HOUR } from '../plan/firstMorning';
import type { RunPlan } from '../plan/runPlan';
import type { Lever } from './lever';
import { dayMeans } from '../dayMeans';
import type { Replay, Stretch } from './replay';

/** What is done once, beside the turn, because the level is off the target. */
export type First =
  | { readonly kind: 'none' }
  | {
      readonly kind: 'pour';
      readonly additive: Carbonate;
      readonly gramsPerDay: number;
      readonly mornings: number;
    }
  /** The lever stands lower for some days, and then where it holds. */
  | { readonly kind: 'less'; readonly to: number; readonly days: number };

export interface Way {
  readonly first: First;
  readonly stretches: readonly Stretch[];
}

/** What the way there is sought with. */
export interface Seek {
  readonly lever: Lever;
  readonly holding: number;
  /** The tank as it stands, with the lever where it holds the target. */
  readonly held: Scenario;
  readonly targetDkh: number;
  readonly days: number;
  /** At the use itself. */
  readonly replay: (stretches: readonly Stretch[]) => Replay;
  readonly runPlan: RunPlan;
  /** The largest move of a day, dKH, at the lowest or the highest use that is thought possible. */
  readonly moveDkh: (stretches: readonly Stretch[], use: 'lowest' | 'highest') => number;
  /** May be moved in a day, dKH. */
  readonly allowedDkh: number;
}

/** Nearer than a test can tell, dKH. */
const NEAR_DKH = 0.1;
const CLOSE_DKH = 0.02;
/** A reservoir is not mixed twice for less. */
const LEAST_MIXED_DKH = 0.6;
/** Longer than this is no turn. */
const MOST_DAYS = 45;
const MOST_MORNINGS = 14;
const STEPS = 5;

/**
 * Ways to the target that keep the daily limit, the shortest first. The last is to pour nothing in: what
 * corals take answers to the level, so that the turn alone brings it there, in weeks or, where much is
 * used, in days.
 */
export function* waysThere(seek: Seek): Generator<Way> {
  const { held, targetDkh, days } = seek;
  const gap = targetDkh - held.tank.alkalinityDkh;
  const corrected = Math.abs(gap) < NEAR_DKH ? undefined : gap > 0 ? poured(seek) : lowered(seek);
  if (corrected) yield corrected;
  if (corrected?.first.kind === 'none') return;
  yield { first: { kind: 'none' }, stretches: [{ scenario: held, untilDay: days }] };
}

function poured({ held, targetDkh, days, runPlan, moveDkh, allowedDkh }: Seek): Way | undefined {
  // Where even the smallest parts move too much in their first days, no larger ones need trying.
  const gap = targetDkh - held.tank.alkalinityDkh;
  const grams = gramsForDkh('sodiumBicarbonate', gap / MOST_MORNINGS, held.tank.volumeL);
  const additions = Array.from({ length: 4 }, (_, i) => ({
    ...{ day: i + 1, hour: MORNING_HOUR, additive: 'sodiumBicarbonate' as const, grams },
  }));
  const tried = { ...held, additions: [...held.additions, ...additions] };
  if (moveDkh([{ scenario: tried, untilDay: 5 }], 'lowest') > allowedDkh) {
    return undefined;
  }
  const most = {
    moveDkh: (scenario: Scenario) => moveDkh([{ scenario, untilDay: scenario.days }], 'lowest'),
    mostDays: MOST_MORNINGS,
  };
  const limits = { ...held.limits, alkalinityChangeDkhPerDay: allowedDkh };
  const upkeep = { ...held, limits };
  const additive = 'sodiumBicarbonate';
  const found = raise(runPlan, { upkeep, targetDkh, additive, giveOrTakeDkhPerDay: 0 }, most);
  if (found.kind !== 'raise' && found.kind !== 'rises') return undefined;
  const stretches = [
    { scenario: { ...held, additions: found.scenario.additions }, untilDay: days },
  ];
  if (found.kind === 'rises') return { first: { kind: 'none' }, stretches };
  const { gramsPerDay, days: mornings } = found;
  return { first: { kind: 'pour', additive, gramsPerDay, mornings }, stretches };
}

/** Days that a fall as in the first ones takes, with as many to spare. */
function daysFor(dkh: readonly number[], targetDkh: number): number {
  const means = dayMeans(dkh);
  const perDay = (means[0]! - means.at(-1)!) / (means.length - 1);
  const days = Math.ceil((2 * (means[0]! - targetDkh)) / Math.max(1e-3, perDay)) + 3;
  return Math.min(MOST_DAYS, Math.max(4, days));
}

function lowered(seek: Seek): Way | undefined {
  const { lever, holding, held, targetDkh, days, replay, moveDkh, allowedDkh } = seek;
  const gap = held.tank.alkalinityDkh - targetDkh;
  if (lever.kind === 'mix' && gap < LEAST_MIXED_DKH) return undefined;
  const at = (value: number, untilDay: number): Stretch => ({
    scenario: { ...lever.set(held, value), limits: held.limits },
    untilDay,
  });
  // The lowest setting whose fall stays inside the limit.
  const settings = Array.from({ length: STEPS }, (_, i) => lever.rounded((holding * i) / STEPS));
  for (const lowest of settings) {
    if (moveDkh([at(lowest, 3)], 'highest') > Math.max(SPARE * allowedDkh, 0)) continue;
    const { dkh } = replay([at(lowest, 4)]);
    const fallen = dayMeans(replay([at(lowest, daysFor(dkh, targetDkh))]).dkh);
    if (fallen.every((mean) => mean > targetDkh)) return undefined;
    const offAfter = (value: number, lowDays: number) => {
      const after = replay([at(value, lowDays), at(holding, lowDays + 1)]);
      return (dayMeans(after.dkh).at(-1) ?? NaN) - targetDkh;
    };
    // The day of the change itself brings some of it back.
    const there = Math.max(
      1,
      fallen.findIndex((mean) => mean <= targetDkh),
    );
    const lowDays = offAfter(lowest, there) > CLOSE_DKH ? there + 1 : there;
    const off = (value: number) => offAfter(value, lowDays);
    const to = lever.rounded(doseWhere(off, lowest, holding, CLOSE_DKH) ?? lowest);
    const stretches = [at(to, lowDays), at(holding, lowDays + days)];
    if (moveDkh(stretches.slice(0, 1), 'highest') > allowedDkh) continue;
    return { first: { kind: 'less', to, days: lowDays }, stretches };
  }
  return undefined;
}
