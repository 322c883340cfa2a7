/** One way in which a log, or the tank behind it, is not plain. */
export const variants = [
  'plain',
  'rounded to 0.1',
  'rounded to 0.3',
  'hours scattered',
  'few noisy calcium readings',
  'five readings',
  'wild reading first',
  'wild reading in the middle',
  'wild reading last',
  'marked bottle',
  'unmarked bottle',
  'other gas and law',
  'volume 15 % off',
  'evaporation 30 % off',
  'pump off, unlogged',
  'use steps up',
  'dosing changed and said',
] as const;

export type Variant = (typeof variants)[number];

/** Those in which the model is right and the readings are plainly noisy. */
export const plainVariants: readonly Variant[] = [
  'plain',
  'rounded to 0.1',
  'rounded to 0.3',
  'hours scattered',
  'few noisy calcium readings',
];
