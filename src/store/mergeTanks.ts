import { mergeBenches } from './mergeBenches';
import { mergeLogs } from './mergeLogs';
import type { BenchPlans } from './plans';
import { same } from './same';
import type { Tank } from './tanks';

export interface Merged {
  readonly tank: Tank;
  /** Plans of the other window that cannot stand beside ours: kept as they were. */
  readonly aside: BenchPlans | undefined;
}

/**
 * One tank out of two that began alike: what only one window has changed is as that window has it;
 * of what both have changed, ours stays and theirs is put aside.
 */
export function mergeTanks(base: Tank, mine: Tank, theirs: Tank): Merged {
  const { bench, aside } = mergeBenches(base.bench, mine.bench, theirs.bench);
  return {
    tank: {
      id: mine.id,
      name: same(mine.name, base.name) ? theirs.name : mine.name,
      bench: same(bench, mine.bench) ? mine.bench : bench,
      log: mergeLogs(base.log, mine.log, theirs.log),
    },
    aside,
  };
}

/** An earlier step of what this window shows, with what another window has made of it meanwhile. */
export function rebased(step: Tank, shown: Tank, now: Tank): Tank {
  // What the other has made stands: undo takes back only what was done here.
  const selected = { ...now, bench: { ...now.bench, selected: shown.bench.selected } };
  return mergeTanks(shown, selected, step).tank;
}
