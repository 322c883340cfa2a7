import { lineOf, type LineResult } from '../../../shared/verdict/lineResult';
import { drifts } from '../plan/drifts';
import { LEAST_PROMISE_DAYS } from '../plan/offered';
import { dayMeans } from '../dayMeans';
import type { Replay } from './replay';

/** Why a turn is not offered. */
export type Refusal =
  /** Nothing that can be turned holds the target. */
  | { readonly kind: 'outOfReach'; readonly restsDkh: number | undefined }
  | { readonly kind: 'breach'; readonly breach: LineResult; readonly firstH: number }
  | { readonly kind: 'offTarget'; readonly endsDkh: number; readonly also: readonly LineResult[] }
  /** If its pump sticks, the stronger mix does harm; so much of it may stand in the reservoir. */
  | { readonly kind: 'dump'; readonly fullestL: number };

/** What a turn may promise, from replays at the use and at both ends of its doubt. */
export interface Promised {
  /** Whole days inside every limit at every use that is thought possible. */
  readonly promisedDays: number;
  /** What ends them sooner than the run; undefined where nothing does. */
  readonly endedBy: { readonly breach: LineResult; readonly firstH: number } | undefined;
  /** Lines that are passed with the turn as they are as the tank runs today. */
  readonly also: readonly LineResult[];
  readonly refusal: Refusal | undefined;
}

/** Farther off two weeks later it holds nothing, dKH: by then it has been tested twice. */
const NEAR_DKH = 0.5;
const HOLDS_DAYS = 14;
/** What is outside already may move by as little as nobody can tell. */
const untold = ({ quantity, limit }: LineResult): number =>
  quantity === 'ph' ? 0.1 : 0.005 * Math.abs(limit);

/** As shown it is at the limit, and not past it. */
const hair = ({ quantity, limit }: LineResult): number =>
  quantity === 'ph' ? 0.005 : 0.0005 * Math.abs(limit);

/** As good as no sooner: what drifts is tested once in so many hours at the most. */
const SOONER_H = 48;

const beyond = ({ trouble, limit }: LineResult, value: number): number =>
  trouble === 'above' ? value - limit : limit - value;

/** A first day that is poured for on the second morning, dKH. */
const UNTOLD_DKH = 0.15;

/** When a line is passed as it may not be; Infinity when it is kept, or no farther than if nothing is turned. */
function breachH(
  line: LineResult,
  replay: Replay,
  { today, allowedDkh, graceH }: { today: Replay; allowedDkh: number; graceH: number },
): number {
  const own = replay.crossings.filter(({ limit }) => limit === line.id);
  const firstH = own.find(({ into }) => into === 'outside')?.timeH ?? Infinity;
  const before = lineOf(today.lines, line.id);
  if (firstH === Infinity) return Infinity;
  if (line.quantity === 'alkalinityChange') return line.worst <= allowedDkh ? Infinity : firstH;
  if (line.quantity !== 'alkalinity') {
    const wasOut = before.firstH !== undefined;
    // What drifts out as the tank runs today, and no sooner with the turn, is named, and no reason.
    const soonerH = (before.firstH ?? Infinity) - firstH;
    if (drifts.includes(line.quantity) && wasOut && soonerH <= SOONER_H) return Infinity;
    const by = beyond(line, line.worst);
    const farther = by > beyond(line, before.worst) + untold(line);
    return by <= hair(line) || (wasOut && !farther) ? Infinity : firstH;
  }
  if (firstH > graceH) return firstH;
  // On the way there its days may be outside, but no farther than the level that it begins with, or than
  // it goes if nothing is turned.
  const begins = Math.max(0, beyond(line, replay.dkh[0]!));
  const anyway = dayMeans(today.dkh).map((mean) => Math.max(begins, beyond(line, mean)));
  const farther = dayMeans(replay.dkh.slice(0, graceH + 1)).some(
    (mean, day) => beyond(line, mean) > (anyway[day] ?? begins) + UNTOLD_DKH,
  );
  if (farther) return firstH;
  const isOut = own.findLast(({ timeH }) => timeH <= graceH)?.into === 'outside';
  if (isOut) return graceH;
  return own.find(({ timeH, into }) => timeH > graceH && into === 'outside')?.timeH ?? Infinity;
}

interface Judged {
  /** If nothing is turned, at each replay's use. */
  readonly todays: readonly Replay[];
  readonly targetDkh: number;
  /** When the replay at the use itself stands at the target; undefined when it never does. */
  readonly settledDays: number | undefined;
  readonly days: number;
  /** What a day may be moved by, at each replay's use. */
  readonly mayMoveDkh: readonly number[];
}

/** `replays` begins with that at the use itself. */
export function promised(
  replays: readonly Replay[],
  { todays, targetDkh, settledDays, days, mayMoveDkh }: Judged,
): Promised {
  const graceH = ((settledDays ?? days) + 1) * 24;
  const breaches = replays
    .flatMap((replay, i) =>
      replay.lines.map((breach) => ({
        ...{
          breach,
          firstH: breachH(breach, replay, {
            ...{ today: todays[i]!, allowedDkh: mayMoveDkh[i]!, graceH },
          }),
        },
      })),
    )
    .filter(({ firstH }) => firstH < Infinity)
    .toSorted((a, b) => a.firstH - b.firstH);
  const endsH = replays.map(({ stoppedH }) => stoppedH ?? days * 24);
  const insideH = Math.min(...endsH, ...breaches.map(({ firstH }) => firstH));
  const promisedDays = Math.floor(insideH / 24);
  const [endedBy] = breaches;
  const also = replays[0]!.lines.filter(
    (line) =>
      line.firstH !== undefined &&
      beyond(line, line.worst) > hair(line) &&
      lineOf(todays[0]!.lines, line.id).firstH !== undefined &&
      line.quantity !== 'alkalinity' &&
      breaches.every(({ breach }) => breach.id !== line.id),
  );
  const so = { promisedDays, endedBy, also };
  if (promisedDays < LEAST_PROMISE_DAYS && endedBy) {
    return { ...so, refusal: { kind: 'breach', ...endedBy } };
  }
  const means = dayMeans(replays[0]!.dkh);
  const endsDkh = means[Math.min(means.length - 1, (settledDays ?? days) + HOLDS_DAYS)] ?? NaN;
  const off = settledDays === undefined || !(Math.abs(endsDkh - targetDkh) <= NEAR_DKH);
  return { ...so, refusal: off ? { kind: 'offTarget', endsDkh, also } : undefined };
}
