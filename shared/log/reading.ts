import * as v from 'valibot';
import { say } from '../words/log';
import { fieldIn, type Field } from '../scenario/fields';
import { required, words } from '../scenario/quantity';
import { alkalinity, calcium, magnesium, salinity } from '../scenario/tank';
import { additiveIds } from '../species/additives';
import { isLocalTime } from './localTime';

const { fields } = say;
const measured = (options: Parameters<typeof required>[0]) => v.optional(required(options));

/** Letters of a note. */
export const LONGEST_NOTE = 1000;

/** Repeatability of a usual alkalinity test, dKH: common practice 0.1–0.2. */
export const USUAL_ACCURACY_DKH = 0.15;

/** What is done to a tank's equipment. */
export const eventIds = [
  ...(['bought', 'cleaned', 'replaced', 'calibrated'] as const),
  ...(['reservoirFilled', 'bottleFilled'] as const),
] as const;
export type EventId = (typeof eventIds)[number];

/**
 * One line of the test log: what was read, what was done, and when. Every number is in the unit
 * that ends its name; whatever was not measured is left out.
 */
export const readingSchema = v.strictObject({
  at: v.pipe(v.string(), v.check(isLocalTime, 'a date and a time of day'), v.title(fields.at)),
  alkalinityDkh: measured(alkalinity(fields.alkalinityDkh)),
  calciumMgPerL: measured(calcium(fields.calciumMgPerL)),
  magnesiumMgPerL: measured(magnesium(fields.magnesiumMgPerL)),
  phNbs: measured({
    title: fields.phNbs,
    unit: 'pH',
    min: 6.5,
    max: 9.5,
    step: 0.01,
  }),
  salinityPractical: measured(salinity(fields.salinityPractical)),
  tempC: measured({ title: fields.tempC, unit: '°C', min: 10, max: 38, step: 0.1 }),
  nitrateMgPerL: measured({
    title: fields.nitrateMgPerL,
    unit: 'mg/L',
    min: 0,
    max: 500,
    step: 0.5,
  }),
  ammoniaMgPerL: measured({
    title: fields.ammoniaMgPerL,
    unit: 'mg/L',
    min: 0,
    max: 20,
    step: 0.01,
  }),
  phosphateMgPerL: measured({
    title: fields.phosphateMgPerL,
    unit: 'mg/L PO₄',
    min: 0,
    max: 20,
    step: 0.01,
  }),
  test: v.optional(words(fields.test, 60)),
  accuracyDkh: measured({
    title: fields.accuracyDkh,
    unit: 'dKH',
    min: 0.01,
    max: 3,
    step: 0.01,
  }),
  lot: v.optional(words(fields.lot, 60)),
  testsLeft: measured({ title: fields.testsLeft, unit: '', min: 0, max: 1000, step: 1 }),
  additive: v.optional(v.pipe(v.picklist(additiveIds), v.title(fields.additive))),
  grams: measured({ title: fields.grams, unit: 'g', min: 0, max: 100000, step: 0.1 }),
  waterChangePercent: measured({
    title: fields.waterChangePercent,
    unit: '%',
    min: 0,
    max: 90,
    step: 1,
  }),
  coralsPercent: measured({
    title: fields.coralsPercent,
    unit: '%',
    min: -95,
    max: 400,
    step: 1,
  }),
  event: v.optional(v.pipe(v.picklist(eventIds), v.title(fields.event))),
  equipment: v.optional(words(fields.equipment, 60)),
  notes: v.optional(words(fields.notes, LONGEST_NOTE)),
});

export type Reading = v.InferOutput<typeof readingSchema>;
export type ReadingName = keyof Reading;
export const readingNames = Object.keys(readingSchema.entries) as ReadingName[];

/** What the schema says about one field of a reading. */
export const readingField = (name: ReadingName): Field => fieldIn(readingSchema, [name])!;

/** The unit that a field is kept in; undefined when it is no number. */
export const ownUnit = (name: ReadingName): string | undefined => readingField(name).quantity?.unit;

/** Whether a line says anything beside when. */
export const saysSomething = (reading: Reading): boolean =>
  readingNames.some((name) => name !== 'at' && reading[name] !== undefined);

const besideTheWater: readonly ReadingName[] = [
  ...(['at', 'test', 'accuracyDkh', 'lot', 'testsLeft', 'event', 'equipment', 'notes'] as const),
];

/** Whether a line says what the water was or what was done to it: a note does not. */
export const tellsOfWater = (reading: Reading): boolean =>
  readingNames.some((name) => !besideTheWater.includes(name) && reading[name] !== undefined);

/** In order of time; lines of one moment keep their order. */
export const inOrder = (readings: readonly Reading[]): Reading[] =>
  readings.toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));

/** Two lines that say the same of the same moment. */
export const sameReading = (a: Reading, b: Reading): boolean =>
  readingNames.every((name) => a[name] === b[name]);
