import * as v from 'valibot';
import { quantity } from '../scenario/quantity';
import { fieldIn, type Field } from '../scenario/fields';
import { alkalinity } from '../scenario/tank';
import { say } from '../words/log';
import { isLocalTime } from './localTime';
import { inOrder, isReading, readingSchema, type Reading } from './reading';

const { settings } = say;
const moment = v.optional(
  v.pipe(
    v.string(),
    v.check((text) => text === '' || isLocalTime(text)),
  ),
  '',
);

/** The log of one tank, and how it is to be read. */
export const tankLogSchema = v.strictObject({
  readings: v.array(readingSchema),
  /** The fit counts from here; empty: the last `USUAL_WINDOW_DAYS`. */
  fitFrom: moment,
  /** The forecast rests on readings up to here and later ones are held against it; empty: all count. */
  heldAt: moment,
  withinDkhPerDay: quantity(
    {
      title: settings.withinDkhPerDay,
      unit: 'dKH/day',
      min: 0.005,
      max: 2,
      step: 0.01,
      help: settings.withinHelp,
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
      help: settings.scoopHelp,
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
      help: settings.pumpHelp,
    },
    0,
  ),
});

export type TankLog = v.InferOutput<typeof tankLogSchema>;

/** A fit over a longer stretch would mix what the corals were with what they are: common practice. */
export const USUAL_WINDOW_DAYS = 60;

export const emptyLog: TankLog = v.parse(tankLogSchema, { readings: [] });

/** A log as it was saved; lines that cannot be read are left out and counted. */
export function readTankLog(value: unknown): { log: TankLog; unreadable: number } {
  const raw = (value ?? {}) as Partial<TankLog>;
  const all: unknown[] = Array.isArray(raw.readings) ? raw.readings : [];
  const readings = inOrder(all.filter(isReading) as Reading[]);
  const parsed = v.safeParse(tankLogSchema, { ...raw, readings });
  const log = parsed.success ? parsed.output : { ...emptyLog, readings };
  return { log, unreadable: all.length - readings.length };
}

/** The numbers that stand beside the readings. */
export type LogSetting = 'withinDkhPerDay' | 'targetDkh' | 'scoopG' | 'pumpMlPerMin';

/** What the schema says about one of them. */
export const settingField = (name: LogSetting): Field => fieldIn(tankLogSchema, [name])!;
