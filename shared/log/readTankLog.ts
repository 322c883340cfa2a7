import * as v from 'valibot';
import type { FieldPath } from '../scenario/fields';
import { problemOf, type Problem } from '../scenario/problem';
import { checkSchema, oldestFirst } from './check';
import { inOrder, readingSchema } from './reading';
import { supplyIds, supplySchema } from './supply';
import { emptyLog, MOST_CHECKS, tankLogSchema, type LogSetting, type TankLog } from './tankLog';

/** A log as far as it can be read, and everything in it that cannot: a bad field never takes others along. */
export interface ReadLog {
  readonly log: TankLog;
  readonly problems: readonly Problem[];
}

const isPart = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** The one way in for a log, wherever it was kept. */
export function readTankLog(value: unknown): ReadLog {
  const problems: Problem[] = [];
  /** What a schema makes of a part; otherwise nothing, and its problems. */
  const take = <Schema extends v.GenericSchema>(
    schema: Schema,
    part: unknown,
    place: FieldPath,
  ) => {
    const read = v.safeParse(schema, part);
    if (read.success) return read.output;
    problems.push(...read.issues.map((issue) => problemOf(issue, tankLogSchema, place)));
    return undefined;
  };
  if (value === undefined) return { log: emptyLog, problems };
  if (!isPart(value)) take(tankLogSchema, value, []);
  const {
    readings: lines = [],
    checks: tests = [],
    supplies: left = [],
    ...settings
  } = isPart(value) ? value : {};
  const readings = (take(v.array(v.unknown()), lines, ['readings']) ?? []).flatMap(
    (line, i) => take(readingSchema, line, ['readings', i]) ?? [],
  );
  const checks = (take(v.array(v.unknown()), tests, ['checks']) ?? [])
    .slice(0, MOST_CHECKS)
    .flatMap((check, i) => take(checkSchema, check, ['checks', i]) ?? []);
  const supplies = (take(v.array(v.unknown()), left, ['supplies']) ?? [])
    .slice(0, supplyIds.length)
    .flatMap((supply, i) => take(supplySchema, supply, ['supplies', i]) ?? []);
  const known = Object.entries(settings).flatMap(([name, setting]) => {
    const read = take(tankLogSchema.entries[name as LogSetting] ?? v.never(), setting, [name]);
    return read === undefined ? [] : [[name, read] as const];
  });
  const log = {
    ...Object.fromEntries(known),
    readings: inOrder(readings),
    checks: oldestFirst(checks),
    supplies,
  };
  return { log: v.parse(tankLogSchema, log), problems };
}
