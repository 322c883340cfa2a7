import * as v from 'valibot';
import { usualMostPerDay } from '../recipe/mostPerDay';
import { quantity } from '../scenario/quantity';
import { fieldIn, type Field } from '../scenario/fields';
import { alkalinity } from '../scenario/tank';
import { say } from '../words/log';
import { isLocalTime } from './localTime';
import { checkSchema } from './check';
import { readingSchema } from './reading';
import { supplyIds, supplySchema } from './supply';

const { settings, fields } = say;
/** As long as anyone is away, and as often as anyone comes, days. */
export const MOST_AWAY_DAYS = 60;
/** More than anyone tests. */
export const MOST_CHECKS = 100;
const moment = (title: string) =>
  v.optional(
    v.pipe(
      v.string(),
      v.check((text) => text === '' || isLocalTime(text), 'a date and a time of day'),
      v.title(title),
    ),
    '',
  );

const from0 = (title: string, unit: string, max: number, usual: number) =>
  quantity({ title, unit, min: usual && 0.1, max, step: 0.1 }, usual);

/** The log of one tank, and how it is to be read. */
export const tankLogSchema = v.pipe(
  v.strictObject({
    readings: v.pipe(v.array(readingSchema), v.title(say.title)),
    /** What was tested of that which should work when something fails. */
    checks: v.optional(
      v.pipe(v.array(checkSchema), v.maxLength(MOST_CHECKS), v.title(say.checks.title)),
      [],
    ),
    /** The fit counts from here; empty: the last `USUAL_WINDOW_DAYS`. */
    fitFrom: moment(settings.fitFrom),
    /** The forecast rests on readings up to here and later ones are held against it; empty: all count. */
    heldAt: moment(settings.heldAt),
    withinDkhPerDay: quantity(
      {
        title: settings.withinDkhPerDay,
        unit: 'dKH/day',
        min: 0.005,
        max: 2,
        step: 0.01,
      },
      0.1,
    ),
    /** What a plan shall hold, and what the keeper measures with. */
    targetDkh: quantity(alkalinity(settings.targetDkh), 8.5),
    scoopG: quantity(
      {
        title: settings.scoopG,
        unit: 'g',
        min: 0,
        max: 500,
        step: 0.1,
      },
      0,
    ),
    pumpMlPerMin: quantity(
      {
        title: settings.pumpMlPerMin,
        unit: 'mL/min',
        min: 0,
        max: 5000,
        step: 0.5,
      },
      0,
    ),
    /** What is left of what is used up, and how long the shop needs (common practice: a week). */
    supplies: v.optional(
      v.pipe(v.array(supplySchema), v.maxLength(supplyIds.length), v.title(say.supplies.title)),
      [],
    ),
    shopDays: quantity({ title: settings.shopDays, unit: 'days', min: 0, max: 90, step: 1 }, 7),
    /** Where calcium and magnesium are to stand; 0, or outside the keeper's band: in its middle. */
    calciumTargetMgPerL: from0(fields.calciumMgPerL, 'mg/L', 1000, 0),
    magnesiumTargetMgPerL: from0(fields.magnesiumMgPerL, 'mg/L', 3000, 0),
    /** May be moved in a day. */
    mostCalciumMgPerLPerDay: from0(fields.calciumMgPerL, 'mg/L', 100, usualMostPerDay.calcium),
    mostMagnesiumMgPerLPerDay: from0(
      fields.magnesiumMgPerL,
      'mg/L',
      200,
      usualMostPerDay.magnesium,
    ),
    mostSalinityPerDay: from0(fields.salinityPractical, 'ppt', 3, usualMostPerDay.salinity),
    /** Whether the bottles of a pair are turned each by itself. */
    pairUnlinked: v.optional(v.boolean(), false),
    /** How long the keeper is away next, and how often somebody comes; 0: nobody does. */
    awayDays: quantity(
      { title: settings.awayDays, unit: 'days', min: 1, max: MOST_AWAY_DAYS, step: 1 },
      9,
    ),
    visitDays: quantity(
      { title: settings.visitDays, unit: 'days', min: 0, max: MOST_AWAY_DAYS, step: 1 },
      0,
    ),
  }),
  v.title(say.title),
);

export type TankLog = v.InferOutput<typeof tankLogSchema>;

/** A fit over a longer stretch would mix what the corals were with what they are: common practice. */
export const USUAL_WINDOW_DAYS = 60;

/** Nobody fits longer: two years take as long as a keeper waits, and tell nothing of today. */
export const LONGEST_FIT_DAYS = 731;

export const emptyLog: TankLog = v.parse(tankLogSchema, { readings: [] });

/** The numbers that stand beside the readings. */
export type LogSetting =
  | 'withinDkhPerDay'
  | 'targetDkh'
  | 'scoopG'
  | 'pumpMlPerMin'
  | 'awayDays'
  | 'visitDays'
  | 'shopDays'
  | 'calciumTargetMgPerL'
  | 'magnesiumTargetMgPerL'
  | 'mostCalciumMgPerLPerDay'
  | 'mostMagnesiumMgPerLPerDay'
  | 'mostSalinityPerDay';

/** What the schema says about one of them. */
export const settingField = (name: LogSetting): Field => fieldIn(tankLogSchema, [name])!;
