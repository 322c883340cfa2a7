import { describe, expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { Asking } from '../../src/ask/asking';
import { Pool } from '../../src/ask/pool';
import type { ToldBy, Questions } from '../../src/ask/outcome';
import { run } from '../../workers/engine/run';
import type { Scenario } from '../../shared/scenario/schema';
import type { Job } from '../../workers/desk/question';
import { questionNamed } from '../../workers/desk/questions';
import { Workshop } from './fakeWorker';

const scenario = (days: number) =>
  scenarioOf({
    type: 'paper-reef/scenario',
    version: 2,
    title: 'a pico tank on a desk in Marrow Quay',
    days,
    tank: { volumeL: 40, alkalinityDkh: 8.5 },
  });

/** Pumps that all switch every five minutes, each at moments of its own. */
const pumps = (count: number) =>
  scenarioOf({
    dosers: Array.from({ length: count }, (_, i) => ({
      ...{ name: `pump ${i + 1}`, mlPerDay: 20 + 3 * i },
      recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 5 }],
      schedule: { way: 'everyMinutes', everyMinutes: 5, pumpMlPerMin: 10 },
    })),
  }).dosers;

/** The questions of a page over the real engine, in workers of this realm. */
const asking = () => new Asking({ pool: new Pool(new Workshop().open, 2) });

describe('what is asked of the engine', () => {
  it('gives the trace that the engine gives', async () => {
    const answer = await asking().ask('trial', scenario(20));
    if (answer.kind !== 'done') throw new Error(answer.kind);
    const direct = run(scenario(20)).trace;
    expect(readColumn(answer.value.trace, 'ph_nbs')).toEqual(readColumn(direct, 'ph_nbs'));
  });

  it('hands buffers over instead of copying them: the worker is left with nothing', async () => {
    const handed: ArrayBuffer[] = [];
    /** The trial as the worker has it, and what it hands over. */
    const watched =
      async () =>
      async (asked: unknown, { goesOn, tell }: Job<unknown>) => {
        const trial = (await questionNamed('trial')) as Questions['trial'];
        const told = (progress: ToldBy<Questions['trial']>) => {
          if (progress.partial) handed.push(progress.partial.trace.buffer);
          tell(progress);
        };
        const outcome = await trial(asked as Scenario, { goesOn, tell: told });
        if (outcome) handed.push(outcome.trace.buffer);
        return outcome;
      };
    const page = new Asking({ pool: new Pool(new Workshop(watched).open, 2) });
    const answer = await page.ask('trial', scenario(1500));
    expect(answer.kind).toBe('done');
    // Partial traces while it runs, then the whole one.
    expect(handed.length).toBeGreaterThan(1);
    for (const buffer of handed) expect(buffer.byteLength).toBe(0);
  }, 30_000);

  it('stops a job that is superseded while its tank is still being settled', async () => {
    // An hour of a tank whose first day alone takes thousands of steps: all of the time goes there.
    const hard = { ...scenario(0.05), dosers: pumps(12) };
    const bench = asking();
    const job = bench.ask('trial', hard);
    bench.cancel('trial');
    expect((await job).kind).toBe('cancelled');
    const begun = performance.now();
    await bench.ask('trial', scenario(1));
    expect(performance.now() - begun).toBeLessThan(2000);
  });

  it('starts a job that was settled in slices from where a run settles by itself', async () => {
    const answer = await asking().ask('trial', scenario(3));
    const direct = run(scenario(3));
    expect(answer).toMatchObject({ kind: 'done', value: { crossings: direct.crossings } });
    if (answer.kind !== 'done') return;
    expect(answer.value.omegaReference).toBe(direct.omegaReference);
  });

  it('tells of progress and partial traces of a long run while it goes on', async () => {
    const heard: ToldBy<Questions['trial']>[] = [];
    const answer = await asking().ask('trial', scenario(1500), {
      tell: (told) => heard.push(told),
    });
    expect(answer.kind).toBe('done');
    expect(heard.length).toBeGreaterThan(0);
    const { hours, of, partial } = heard[0]!;
    expect(hours).toBeLessThan(of);
    expect(readColumn(partial!.trace, 'time_h').at(-1)).toBe(hours);
  }, 30_000);

  it('brings an error as a value with its code and its words', async () => {
    const impossible = scenario(2);
    const broken = { ...impossible, tank: { ...impossible.tank, alkalinityDkh: NaN } };
    const answer = await asking().ask('trial', broken);
    expect(answer).toMatchObject({ kind: 'failed', failure: { code: 'outOfRange' } });
    if (answer.kind === 'failed') expect(answer.failure.message).toMatch(/alkalinity/i);
  });
});
