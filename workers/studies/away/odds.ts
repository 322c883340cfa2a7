import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { watchedLines } from '../../../shared/verdict/lines';
import { usualSpreads } from '../../../shared/verdict/spreads';
import type { SimulationOptions } from '../../engine/simulation';
import { settle } from '../../engine/settle';
import { drawsOf, memberOf } from '../drill/member';
import { summaryOf, type LineSummary, type Quantiles } from '../drill/ensembleSummary';
import type { MemberResult } from '../drill/memberResult';
import { isLevel } from '../drill/passing';
import { delivery, evaporation, limewater, volume, type Doubt } from '../fit/doubts';
import type { Now } from '../fit/fitted';
import { restingItself } from '../plan/atRest';
import { withUse } from '../plan/useEnds';
import { LeftTank } from './leftTank';

/** What is not quite known of a tank that is left alone. */
export interface Unsure {
  /** Two standard errors of the use, dKH a day. */
  readonly giveOrTakeDkhPerDay: number;
  /** Standard error of the level, dKH; undefined: as one test tells it. */
  readonly levelErrorDkh?: number | undefined;
  /** How far the fitted use would be off with each typed number; none where nothing was fitted. */
  readonly doubts?: Now['doubts'] | undefined;
}

/** What may be while nobody looks, in tanks that this may be. */
export interface AwayOdds {
  readonly members: number;
  /** For so many days: as many as are promised, and one at least. */
  readonly days: number;
  /** Share of them in which a level passes a line that is kept with the keeper at home. */
  readonly leaveShare: number;
  readonly lines: readonly LineSummary[];
  /** Alkalinity hour by hour, dKH. */
  readonly dkh: readonly Quantiles[];
  /** Share of them whose reservoir was empty. */
  readonly dryShare: number;
}

const SEED = 20260101;
/** What the spreads of a drill know nothing of, drawn apart. */
const OTHER_SEED = 7041;

/** A share of a typed number, never below a tenth of it. */
const atLeast = (share: number) => Math.max(-0.9, share);

/** One of them: what a fit was read with moves the use that it found. */
function memberTank(
  left: Scenario,
  unsure: Unsure,
  index: number,
  resting: ReturnType<typeof restingItself>,
): Scenario {
  const { giveOrTakeDkhPerDay, levelErrorDkh, doubts = [] } = unsure;
  const draws = drawsOf(SEED, index);
  const others = drawsOf(OTHER_SEED, index);
  const spreads = {
    ...usualSpreads,
    hour: 0,
    alkalinity: levelErrorDkh ?? usualSpreads.alkalinity,
  };
  const shares: readonly (readonly [Doubt, number])[] = [
    [evaporation, evaporation.sigma * others.kLa],
    [delivery, delivery.sigma * others.pump],
    [volume, (spreads.volume / 100) * draws.volume],
    [limewater, (spreads.strength / 100) * draws.strength],
  ];
  const asFitted = shares.reduce(
    (sum, [{ id, sigma }, share]) => {
      const moved = doubts.find((doubt) => doubt.id === id)?.useDkhPerDay ?? 0;
      return sum + (moved * share) / sigma;
    },
    (giveOrTakeDkhPerDay / 2) * others.volume,
  );
  const own = memberOf({ ...left, faults: [] }, spreads, draws);
  const drawn = shares
    .slice(0, 2)
    .reduce((plan, [{ more }, share]) => more(plan, atLeast(share)), own);
  const sound = withUse(drawn, Math.max(0, left.corals.useDkhPerDay + asFitted));
  return { ...resting(sound), faults: left.faults };
}

/** So many tanks that this may be, each left alone as the plan has it. */
export function oddsOf(
  left: Scenario,
  unsure: Unsure,
  anyway: readonly string[],
  members: number,
  options: SimulationOptions,
): AwayOdds {
  const sound = { ...left, faults: [] };
  const near = { ...options, near: settle(sound, options) };
  const resting = restingItself(sound, options);
  const results = Array.from({ length: members }, (_, index): MemberResult => {
    const own = memberTank(left, unsure, index, resting);
    const { run, reservoirDryH } = new LeftTank(own, near).run(own);
    return {
      ...{ index, draws: drawsOf(SEED, index), dryAfterH: reservoirDryH },
      lines: run.lines.map(({ id, firstH, worst, outsideH, backH }) => ({
        ...{ id, worst, outsideH, afterH: firstH, backAfterH: backH },
      })),
      ph: Float32Array.from(readColumn(run.trace, 'ph_nbs')),
      dkh: Float32Array.from(readColumn(run.trace, 'alkalinity_dkh')),
    };
  });
  const { lines, dkh, dryShare } = summaryOf(results);
  const levels = watchedLines(left)
    .filter((line) => isLevel(line) && !anyway.includes(line.id))
    .map(({ id }) => id);
  const leave = results.filter((member) =>
    member.lines.some(({ id, afterH }) => afterH !== undefined && levels.includes(id)),
  );
  return { members, days: left.days, leaveShare: leave.length / members, lines, dkh, dryShare };
}
