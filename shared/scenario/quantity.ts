import * as v from 'valibot';

/** What a form, a help text and a complaint need to know about one number. */
export interface QuantityMeta {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  /** The stretch a slider covers; typed numbers may use all of min to max. */
  readonly slider: readonly [number, number];
  readonly step: number;
  readonly default: number | undefined;
  /** How a keeper finds this number. */
  readonly measure?: string;
  /** A well-meant wrong number, and what was probably meant. */
  readonly mistake?: (value: number) => string | undefined;
}

/** What a reader is told of a field. */
export interface FieldText {
  readonly title: string;
  readonly help?: string;
  /** How a keeper finds this number. */
  readonly measure?: string;
}

interface QuantityOptions extends FieldText {
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly slider?: readonly [number, number];
  readonly step: number;
  readonly mistake?: (value: number) => string | undefined;
}

function number(options: QuantityOptions, fallback: number | undefined) {
  const { title, help = '', slider, ...rest } = options;
  const meta: QuantityMeta = {
    ...rest,
    slider: slider ?? [options.min, options.max],
    default: fallback,
  };
  return v.pipe(
    v.number(),
    v.finite(),
    v.minValue(options.min),
    v.maxValue(options.max),
    v.title(title),
    v.description(help),
    v.metadata({ ...meta }),
  );
}

/** A number that a scenario must state. */
export const required = (options: QuantityOptions) => number(options, undefined);

/** A number with a usual value, which a file may leave out. */
export const quantity = (options: QuantityOptions, usual: number) =>
  v.optional(number(options, usual), usual);

/** A choice among named ways. */
export const choice = <const Options extends readonly [string, ...string[]]>(
  { title, help = '' }: FieldText,
  options: Options,
  usual: Options[number],
) => v.optional(v.pipe(v.picklist(options), v.title(title), v.description(help)), usual);

/** A few words, of bounded length. */
export const words = (title: string, max: number) =>
  v.pipe(v.string(), v.maxLength(max), v.title(title));

/** A part of the scenario: no field that is not named here, and a title for the form. */
export const part = <const Entries extends v.ObjectEntries>(
  { title, help = '' }: FieldText,
  entries: Entries,
) => v.pipe(v.strictObject(entries), v.title(title), v.description(help));

/** A number that varies in time, written as an expression of day and hour; "1" is the usual one. */
export const expression = ({ title, help = '' }: FieldText) =>
  v.optional(
    v.pipe(
      v.string(),
      v.maxLength(200),
      v.title(title),
      v.description(help),
      v.metadata({ expression: true }),
    ),
    '1',
  );
