import { hoursOf } from '../../../shared/log/localTime';
import { inOrder, ownUnit, readingField, type Reading } from '../../../shared/log/reading';
import { limitBands, type LimitId } from '../../../shared/scenario/limitBands';
import type { Scenario } from '../../../shared/scenario/schema';
import { conversionOf, type DisplayUnits } from '../../../shared/units/display';
import { BACK_H, type Reach } from './reach';

/** What of the water can be looked at over the month, alkalinity first. */
const limitOf = {
  alkalinityDkh: 'alkalinity',
  calciumMgPerL: 'calcium',
  magnesiumMgPerL: 'magnesium',
  nitrateMgPerL: undefined,
  phosphateMgPerL: undefined,
  phNbs: 'ph',
  salinityPractical: 'salinity',
  tempC: 'temperature',
  ammoniaMgPerL: undefined,
} as const satisfies Partial<Record<keyof Reading, LimitId | undefined>>;

export type MonthId = keyof typeof limitOf;

/** Digits that such a kit or probe is read to. */
const digits: Readonly<Record<MonthId, number>> = {
  ...{ alkalinityDkh: 1, calciumMgPerL: 0, magnesiumMgPerL: 0, nitrateMgPerL: 1 },
  ...{ phosphateMgPerL: 2, phNbs: 2, salinityPractical: 1, tempC: 1, ammoniaMgPerL: 2 },
};

/** Those that were ever read. */
export const everRead = (readings: readonly Reading[]): MonthId[] =>
  (Object.keys(limitOf) as MonthId[]).filter((id) =>
    readings.some((reading) => reading[id] !== undefined),
  );

export const titleOf = (id: MonthId): string => readingField(id).title;

/** At rest it looks back a month, or as far as so many readings reach, and no farther than a year. */
const LEAST_DOTS = 6;
const MOST_BACK_H = 366 * 24;
const AHEAD_H = 3 * 24;

/** The readings of one quantity as dots, in the reader's unit. */
export interface Dots {
  readonly title: string;
  readonly unit: string;
  readonly digits: number;
  readonly dots: readonly { readonly timeH: number; readonly value: number }[];
  readonly band: readonly [number, number] | undefined;
  readonly reach: Reach;
}

/** What was read of a quantity up to the newest line; undefined where nothing was. */
export function dotsOf(
  id: MonthId,
  readings: readonly Reading[],
  { limits }: Scenario,
  display: DisplayUnits,
): Dots | undefined {
  const read = inOrder(readings).filter((reading) => reading[id] !== undefined);
  const startAt = read[0]?.at;
  const last = inOrder(readings).at(-1);
  if (startAt === undefined || !last) return undefined;
  const { unit, out, moreDigits } = conversionOf(ownUnit(id) ?? '', display);
  const startH = hoursOf(startAt);
  const endH = hoursOf(last.at) - startH;
  const dots = read.map((reading) => ({
    timeH: hoursOf(reading.at) - startH,
    value: out(reading[id]!),
  }));
  const reach = dots.at(-LEAST_DOTS)?.timeH ?? 0;
  const toH = endH + AHEAD_H;
  const fromH = Math.max(endH - MOST_BACK_H, Math.min(endH - BACK_H, reach - 24));
  const band = limitBands(limits).find((one) => one.id === limitOf[id]);
  return {
    ...{
      title: titleOf(id),
      unit: id === 'phNbs' ? 'NBS' : unit,
      digits: Math.max(0, digits[id] + moreDigits),
    },
    dots,
    band: band && [out(band.low), out(band.high)],
    reach: {
      ...{ startAt, endH, rest: { fromH, toH } },
      whole: { fromH: Math.min(0, fromH), toH },
    },
  };
}
