import { say } from '../words/problems';
import * as v from 'valibot';
import type { QuantityMeta } from './quantity';
import { scenarioSchema } from './schema';

/** Where a field sits: names of parts, and positions in lists. */
export type FieldPath = readonly (string | number)[];

/** What the schema says about one field; forms, help and complaints all ask here. */
export interface Field {
  readonly title: string;
  readonly help: string;
  readonly kind: string;
  /** For numbers. */
  readonly quantity: QuantityMeta | undefined;
  /** Whether it is an expression of time. */
  readonly isExpression: boolean;
  /** For choices. */
  readonly options: readonly string[];
  /** For parts: the fields inside. */
  readonly keys: readonly string[];
}

type Schema = v.GenericSchema & {
  readonly wrapped?: Schema;
  readonly entries?: Readonly<Record<string, Schema>>;
  readonly item?: Schema;
  readonly options?: readonly string[];
};

const unwrap = (schema: Schema): Schema => (schema.wrapped ? unwrap(schema.wrapped) : schema);

function descend(root: unknown, path: FieldPath): Schema | undefined {
  let schema: Schema | undefined = root as Schema;
  for (const step of path) {
    const inner: Schema = unwrap(schema);
    schema = typeof step === 'number' ? inner.item : inner.entries?.[step];
    if (!schema) return undefined;
  }
  return unwrap(schema);
}

/** The description of the field at a path, or undefined when the schema has no such field. */
export const fieldAt = (path: FieldPath): Field | undefined => fieldIn(scenarioSchema, path);

/** The same of any schema that is made of the same parts. */
export function fieldIn(root: unknown, path: FieldPath): Field | undefined {
  const schema = descend(root, path);
  if (!schema) return undefined;
  const metadata = v.getMetadata(schema) as Partial<QuantityMeta> & { expression?: true };
  return {
    title: v.getTitle(schema) ?? String(path.at(-1) ?? 'Scenario'),
    help: v.getDescription(schema) ?? '',
    kind: schema.type,
    quantity: metadata.unit === undefined ? undefined : (metadata as QuantityMeta),
    isExpression: metadata.expression === true,
    options: schema.options ?? [],
    keys: Object.keys(schema.entries ?? {}),
  };
}

/** The description of a number; a path that leads to none is a mistake of ours. */
export function quantityAt(path: FieldPath): Field & { readonly quantity: QuantityMeta } {
  const field = fieldAt(path);
  if (!field?.quantity) throw new RangeError(`No quantity at '${pathText(path)}' in the schema.`);
  return field as Field & { readonly quantity: QuantityMeta };
}

export const pathText = (path: FieldPath): string =>
  path.reduce<string>(
    (text, step) =>
      typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`,
    '',
  ) || say.wholeFile;
