import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { SCENARIO_VERSION } from '../../../shared/scenario/schema';
import type { LeftThere } from './leftThere';

const folder = new URL('../../border/releases/', import.meta.url);

/** The stores of a database of this version, empty. */
export const emptyStores = (version: number) => ({
  bench: {},
  ...(version > 1 && { tanks: {} }),
  ...(version > 2 && { aside: {} }),
});

/** What each release has kept, in the database and as a closing page leaves it. */
export const releasesLeft = (): (readonly [name: string, record: unknown, left: LeftThere])[] =>
  readdirSync(folder).flatMap((release) => {
    const isTank = existsSync(new URL(`${release}/tank.json`, folder));
    const file = new URL(`${release}/${isTank ? 'tank' : 'bench'}.json`, folder);
    const record: unknown = JSON.parse(readFileSync(file, 'utf8'));
    const format = Number(/"version": (\d)/.exec(readFileSync(file, 'utf8'))![1]);
    const version = isTank ? Math.max(2, format + 1) : 1;
    const stores = emptyStores(version);
    const there = isTank ? { tanks: { 'tank-1': record } } : { bench: { plans: record } };
    const now = SCENARIO_VERSION + 1;
    return [
      [`${release}, in its database`, record, { version, stores: { ...stores, ...there } }],
      [
        `${release}, left by a closing page`,
        record,
        {
          ...{ version: now, stores: emptyStores(now) },
          beside: { 'paper-reef': JSON.stringify(record) },
        },
      ],
    ] as const;
  });

/** A tank as the newest release keeps it. */
export const newestTank = (): Record<string, unknown> => {
  const newest = readdirSync(folder)
    .toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }))
    .at(-1)!;
  return JSON.parse(readFileSync(new URL(`${newest}/tank.json`, folder), 'utf8')) as Record<
    string,
    unknown
  >;
};
