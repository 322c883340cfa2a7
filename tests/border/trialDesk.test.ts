import * as Comlink from 'comlink';
import { afterEach, describe, expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { TrialDesk, type Progress } from '../../workers/trialDesk';

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

const channels: MessageChannel[] = [];

/** The desk behind a real message port: what crosses is cloned or transferred as in a worker. */
function deskBehindAPort() {
  const channel = new MessageChannel();
  channels.push(channel);
  Comlink.expose(new TrialDesk(), channel.port1 as unknown as Comlink.Endpoint);
  channel.port1.start();
  channel.port2.start();
  return Comlink.wrap<TrialDesk>(channel.port2 as unknown as Comlink.Endpoint);
}

afterEach(() => {
  for (const { port1, port2 } of channels.splice(0)) {
    port1.close();
    port2.close();
  }
});

describe('the worker door', () => {
  it('gives the trace that the engine gives', async () => {
    const answer = await deskBehindAPort().run('a', 1, scenario(20));
    if (answer.kind !== 'done') throw new Error(answer.kind);
    const direct = run(scenario(20)).trace;
    expect(readColumn(answer.value.trace, 'ph_nbs')).toEqual(readColumn(direct, 'ph_nbs'));
  });

  it('hands the buffer over instead of copying it: the sender is left with nothing', async () => {
    const desk = new TrialDesk();
    const answer = await desk.run('a', 1, scenario(2));
    if (answer.kind !== 'done') throw new Error(answer.kind);
    const { buffer } = answer.value.trace;
    const { port1, port2 } = new MessageChannel();
    channels.push({ port1, port2 });
    Comlink.expose({ give: () => answer }, port1 as unknown as Comlink.Endpoint);
    const remote = Comlink.wrap<{ give(): typeof answer }>(port2 as unknown as Comlink.Endpoint);
    const taken = await remote.give();
    expect(taken.kind === 'done' && taken.value.trace.buffer.byteLength).toBeGreaterThan(0);
    expect(buffer.byteLength).toBe(0);
  });

  it('ends an older job on the same trial when a newer one comes', async () => {
    const desk = deskBehindAPort();
    const older = desk.run('a', 1, scenario(365));
    const newer = desk.run('a', 2, scenario(2));
    expect((await older).kind).toBe('superseded');
    expect((await newer).kind).toBe('done');
  });

  it('lets jobs on other trials be', async () => {
    const desk = deskBehindAPort();
    const both = await Promise.all([desk.run('a', 1, scenario(60)), desk.run('b', 2, scenario(2))]);
    expect(both.map(({ kind }) => kind)).toEqual(['done', 'done']);
  });

  it('stops a job that is cancelled while its tank is still being settled', async () => {
    // An hour of a tank whose first day alone takes thousands of steps: all of the time goes there.
    const hard = { ...scenario(0.05), dosers: pumps(12) };
    const desk = deskBehindAPort();
    const job = desk.run('a', 1, hard);
    await desk.cancel('a');
    expect((await job).kind).toBe('superseded');
  });

  it('starts a job that was settled in slices from where a run settles by itself', async () => {
    const answer = await deskBehindAPort().run('a', 1, scenario(3));
    const direct = run(scenario(3));
    expect(answer).toMatchObject({ kind: 'done', value: { crossings: direct.crossings } });
    if (answer.kind !== 'done') return;
    expect(answer.value.omegaReference).toBe(direct.omegaReference);
  });

  it('stops a job that is cancelled', async () => {
    const desk = deskBehindAPort();
    const job = desk.run('a', 1, scenario(365));
    await desk.cancel('a');
    expect((await job).kind).toBe('superseded');
  });

  it('reports progress and partial traces of a long run while it goes on', async () => {
    const heard: Progress[] = [];
    const report = Comlink.proxy((progress: Progress) => void heard.push(progress));
    // Held by a name: a remote that is collected as garbage closes its port.
    const desk = deskBehindAPort();
    const answer = await desk.run('a', 1, scenario(1500), report);
    desk[Comlink.releaseProxy]();
    expect(answer.kind).toBe('done');
    expect(heard.length).toBeGreaterThan(0);
    const { hours, of, partial } = heard[0]!;
    expect(hours).toBeLessThan(of);
    expect(readColumn(partial!.trace, 'time_h').at(-1)).toBe(hours);
  }, 30_000);

  it('brings an error as a value with its code and its words', async () => {
    const impossible = scenario(2);
    const broken = { ...impossible, tank: { ...impossible.tank, alkalinityDkh: NaN } };
    const answer = await deskBehindAPort().run('a', 1, broken);
    expect(answer).toMatchObject({ kind: 'failed', failure: { code: 'outOfRange' } });
    if (answer.kind === 'failed') expect(answer.failure.message).toMatch(/alkalinity/i);
  });
});
