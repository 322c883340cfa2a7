import { AND_THE_SAME } from '../charts/endLabels';
import type { Trace } from '../../shared/trace/trace';
import type { Plans } from './plans.svelte';
import type { Trials } from './trials.svelte';
import { inks, type Ink } from '../store/inks';

/** A trial as the charts need it. */
export interface ShownTrial {
  readonly id: string;
  readonly name: string;
  readonly ink: Ink;
  readonly trace: Trace;
}

/** The trials that have a course; those that are the same are one line, in the selected one's ink. */
export function shownTrials(plans: Plans, trials: Trials): ShownTrial[] {
  const all = plans.all.flatMap(({ id, name, ink }) => {
    const result = trials.of(id).result;
    return result ? [{ id, name, ink: inks[ink]!, trace: result.outcome.trace }] : [];
  });
  return asOneLine(all, plans.selected.id);
}

export function asOneLine(all: readonly ShownTrial[], selectedId: string): ShownTrial[] {
  return all.flatMap((trial) => {
    const alike = all.filter(({ trace }) => trace === trial.trace);
    if (alike[0] !== trial) return [];
    const lead = alike.find(({ id }) => id === selectedId) ?? trial;
    return [{ ...lead, name: alike.map(({ name }) => name).join(AND_THE_SAME) }];
  });
}

export const sameTrials = (a: readonly ShownTrial[], b: readonly ShownTrial[]): boolean =>
  a.length === b.length &&
  a.every(({ id, name, ink, trace }, i) => {
    const other = b[i]!;
    return id === other.id && name === other.name && ink === other.ink && trace === other.trace;
  });

/** Gives the same object again while it says the same, so that nothing is drawn twice. */
export function steady<T>(compute: () => T, same: (a: T, b: T) => boolean): () => T {
  let last: T | undefined;
  return () => {
    const next = compute();
    if (last === undefined || !same(last, next)) last = next;
    return last;
  };
}
