import { readScenario } from '../../shared/scenario/parse';
import type { Scenario } from '../../shared/scenario/schema';

const KEY = 'paper-reef drill';

type Rehearsed = Pick<Scenario, 'faults' | 'days'>;

/** What was rehearsed last, if it can still be read; a browser that keeps nothing gives nothing. */
export function recall(plan: Scenario): Rehearsed | undefined {
  try {
    const text = localStorage.getItem(KEY);
    if (text === null) return undefined;
    const read = readScenario({ ...plan, ...(JSON.parse(text) as object) });
    return read.ok ? { faults: read.scenario.faults, days: read.scenario.days } : undefined;
  } catch {
    return undefined;
  }
}

export function remember({ faults, days }: Rehearsed): void {
  try {
    localStorage.setItem(KEY, JSON.stringify({ faults, days }));
  } catch {
    // Storage refused or full: the drill lasts as long as the page.
  }
}
