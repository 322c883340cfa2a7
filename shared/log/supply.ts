import * as v from 'valibot';
import { additiveIds } from '../species/additives';
import { quantity } from '../scenario/quantity';
import { say } from '../words/log';
import { isLocalTime } from './localTime';

const { supplies } = say;

/** What a keeper buys: the powders of mix and bottles, salt for new water, tests of a kit. */
export const supplyIds = [...additiveIds, 'salt', 'tests'] as const;

export type SupplyId = (typeof supplyIds)[number];

/** What was left of one of them, g, or how many tests, when the keeper looked. */
export const supplySchema = v.pipe(
  v.strictObject({
    id: v.pipe(v.picklist(supplyIds), v.title(supplies.what)),
    left: quantity({ title: supplies.left, unit: '', min: 0, max: 1_000_000, step: 1 }, 0),
    /** A local time. */
    countedAt: v.pipe(
      v.string(),
      v.check((text) => isLocalTime(text), 'a date and a time of day'),
      v.title(supplies.counted),
    ),
  }),
  v.title(supplies.title),
);

export type Supply = v.InferOutput<typeof supplySchema>;

/** The list with what was counted anew in the place of what was counted before. */
export const withSupply = (list: readonly Supply[], supply: Supply): Supply[] => [
  ...list.filter(({ id }) => id !== supply.id),
  supply,
];
