import { describe, expect, it, vi } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { Asking } from '../../src/ask/asking';
import { Pool } from '../../src/ask/pool';
import { Trials } from '../../src/bench/trials.svelte';
import type { PlanOnBench } from '../../src/store/plans';
import { Workshop } from '../border/fakeWorker';

const tank = scenarioOf({ days: 1 });
const plan = (id: string, scenario = tank): PlanOnBench => ({ id, name: id, ink: 0, scenario });
const soon = (check: () => void) => vi.waitFor(check, { timeout: 20_000, interval: 20 });

function bench() {
  const asking = new Asking({ pool: new Pool(new Workshop().open, 2) });
  const ask = vi.spyOn(asking, 'ask');
  return { ask, trials: new Trials(asking) };
}
const isAnswered = (trials: Trials, { id, scenario }: PlanOnBench) =>
  expect(trials.of(id).answers).toBe(scenario);

describe('the trials of a bench', () => {
  it('are run once for plans that are the same, and once for each that is not', async () => {
    const { ask, trials } = bench();
    const plans = [plan('today'), plan('a'), plan('b', scenarioOf({ days: 2 }))];
    trials.follow(plans);
    await soon(() => plans.forEach((one) => isAnswered(trials, one)));
    expect(ask).toHaveBeenCalledTimes(2);
    expect(trials.of('today').result).toBe(trials.of('a').result);
    expect(trials.of('b').result!.outcome.trace.rows).toBe(49);
    trials.follow([...plans, plan('c')]);
    isAnswered(trials, plan('c'));
    expect(ask).toHaveBeenCalledTimes(2);
  });

  it('keep the last good answer on show until a newer has come, and forget a plan that is gone', async () => {
    const { trials } = bench();
    trials.follow([plan('a')]);
    await soon(() => isAnswered(trials, plan('a')));
    const first = trials.of('a').result;
    const next = plan('a', scenarioOf({ days: 3 }));
    trials.follow([next]);
    expect(trials.of('a').result).toBe(first);
    await soon(() => isAnswered(trials, next));
    expect(trials.of('a').result!.scenario).toBe(next.scenario);
    trials.follow([]);
    expect(trials.of('a')).toEqual({ result: undefined, trouble: undefined, progress: undefined });
  });

  it('say what could not be run, beside the last good answer', async () => {
    const { trials } = bench();
    trials.follow([plan('a')]);
    await soon(() => isAnswered(trials, plan('a')));
    const broken = plan('a', { ...tank, tank: { ...tank.tank, alkalinityDkh: Number.NaN } });
    trials.follow([broken]);
    await soon(() => isAnswered(trials, broken));
    expect(trials.of('a').trouble).toMatch(/\w/);
    expect(trials.of('a').result!.scenario).toBe(tank);
  });
});
