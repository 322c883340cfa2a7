import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import { straightLine } from '../../../shared/log/slope';
import type { Scenario } from '../../../shared/scenario/schema';
import { meqPerLPerDkh } from '../../../shared/seawater/alkalinity';
import { alkalinityMeqPerG } from '../../../shared/species/additives';
import type { Draw } from './draw';
import { typedPlan, type Tank } from './tank';
import { dosedAnew, runTruth, type Truth } from './truth';
import type { RanUntil } from '../../../workers/studies/fit/turnedAt';
import type { Variant } from './variants';

export const START_H = 20_454 * 24;

/** What a keeper has: a plan and a log. */
export interface Kept {
  readonly plan: Scenario;
  readonly log: readonly Reading[];
  /** What ran before a turn, and until when. */
  readonly ran: readonly RanUntil[];
  /** How the bottle reads that is open when the log ends, and its mark. */
  readonly open: { readonly byDkh: number; readonly lot: string | undefined };
}

/** When it is tested: about evenly, at the keeper's hour, or at any. */
function testTimes(draw: Draw, { days, readings }: Tank, scattered: boolean): number[] {
  const own = draw.between(8, 21);
  const hour = () => (scattered ? draw.between(7, 23) : own);
  const last = Math.floor(days);
  const picked = Array.from({ length: readings }, (_, i) => (i * last) / (readings - 1));
  const drawn = picked.map((day, i) =>
    i === 0 || i === readings - 1 ? day : day + draw.between(-0.4, 0.4),
  );
  const whole = [...new Set(drawn.map((day) => Math.max(0, Math.min(last, Math.round(day)))))];
  return whole.map((day) => day * 24 + Math.round(hour() * 60) / 60).toSorted((a, b) => a - b);
}

/** A new bottle is opened half way. */
const halfOf = (readings: readonly number[]) => Math.floor(readings.length / 2);

const WILD = {
  'wild reading first': () => 0,
  'wild reading in the middle': (count: number) => Math.floor(count / 2),
  'wild reading last': (count: number) => count - 1,
} as const;

/** The water as this keeper reads it, in this variant, and how the last bottle reads. */
function read(draw: Draw, tank: Tank, variant: Variant, water: readonly number[]) {
  const wildAt = variant in WILD ? WILD[variant as keyof typeof WILD](water.length) : -1;
  const wild = draw.between(1.2, 3) * (draw.between(0, 1) < 0.5 ? -1 : 1);
  const bottle = draw.between(0.2, 0.5) * (draw.between(0, 1) < 0.5 ? -1 : 1);
  const opensAt = halfOf(water);
  const grid = variant === 'rounded to 0.3' ? 0.3 : variant === 'rounded to 0.1' ? 0.1 : 0.01;
  const openByDkh = variant.endsWith('bottle') ? bottle : 0;
  const values = water.map((dkh, i) => {
    const off = (i === wildAt ? wild : 0) + (i >= opensAt ? openByDkh : 0);
    const value = dkh + off + tank.sigmaDkh * draw.normal();
    return Number((Math.round(Math.max(1, value) / grid) * grid).toFixed(2));
  });
  return { values, openByDkh };
}

/** A twin: the tank in truth, and what its keeper wrote down of it. */
export function keep(draw: Draw, tank: Tank, variant: Variant): { truth: Truth; kept: Kept } {
  const timesH = testTimes(draw, tank, variant === 'hours scattered');
  const truth = runTruth(draw, tank, variant, timesH);
  const { values, openByDkh } = read(draw, tank, variant, truth.dkh);
  const opensAt = halfOf(values);
  const tests = values.map((alkalinityDkh, i): Reading => ({
    at: localTimeOf(START_H + timesH[i]!),
    alkalinityDkh,
    ...(variant === 'marked bottle' && { lot: i < opensAt ? 'A' : 'B' }),
    ...(variant === 'few noisy calcium readings' &&
      i % Math.ceil(values.length / 3) === 0 && {
        calciumMgPerL: Math.round(425 + 20 * draw.normal()),
      }),
  }));
  const within = truth.done.filter(({ timeH }) => timeH <= timesH.at(-1)!);
  const doses = within.map(({ timeH, additive, grams, percent }): Reading => ({
    at: localTimeOf(START_H + timeH),
    ...(additive === undefined ? { waterChangePercent: percent! } : { additive, grams: grams! }),
  }));
  const log = [...tests, ...doses].toSorted((a, b) => (a.at < b.at ? -1 : 1));
  const { turned } = truth;
  const plan = typedPlan(tank, values[0]!);
  const open = { byDkh: openByDkh, lot: tests.at(-1)!.lot };
  if (!turned) return { truth, kept: { plan, log, ran: [], open } };
  const ran = [{ until: localTimeOf(START_H + turned.atH), plan }];
  return {
    truth,
    kept: { plan: typedPlan(dosedAnew(tank, turned.times), values[0]!), log, ran, open },
  };
}

/** The straight line of a careful keeper: all that was dosed is added back, evenly. */
export function byLine(tank: Tank, { plan, log, ran }: Kept, times = 1): number {
  const tested = log.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  const days = tested.map(({ at }) => (hoursOf(at) - START_H) / 24);
  const dkh = tested.map(({ alkalinityDkh }) => alkalinityDkh!);
  const [from, to] = [days[0]!, days.at(-1)!];
  const within = log.filter(({ at }) => at >= tested[0]!.at && at <= tested.at(-1)!.at);
  const soda = within.filter(({ additive }) => additive === 'sodiumBicarbonate');
  const grams = soda.reduce((sum, reading) => sum + reading.grams!, 0);
  const poured = (grams * alkalinityMeqPerG('sodiumBicarbonate')) / tank.volumeL / meqPerLPerDkh;
  const level = dkh.reduce((sum, value) => sum + value, 0) / dkh.length;
  const changed = within.reduce(
    (sum, { waterChangePercent = 0 }) =>
      sum + (waterChangePercent / 100) * (plan.waterChanges.salt.alkalinityDkh - level),
    0,
  );
  const turnedAt = ran.length > 0 ? (hoursOf(ran[0]!.until) - START_H) / 24 : to;
  const more = 1 + ((times - 1) * Math.max(0, to - Math.max(from, turnedAt))) / (to - from);
  const isPumped = tank.carrier === 'limewater' || tank.carrier === 'pairs';
  const steady = isPumped ? tank.dosedDkhPerDay * more : 0;
  const { slopeDkhPerDay } = straightLine(days, dkh, tank.sigmaDkh);
  return steady + (poured + changed) / (to - from) - slopeDkhPerDay;
}
