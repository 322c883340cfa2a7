import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { Asking } from '../../src/ask/asking';
import { manners } from '../../src/ask/manners';
import { Pool } from '../../src/ask/pool';
import { share } from '../../src/ask/share';
import type { Job } from '../../workers/desk/question';
import { Workshop } from './fakeWorker';

const tank = scenarioOf({});

/** Work that stands in for the engine's: it ends when told to, and is counted. */
class Works {
  running = 0;
  most = 0;
  begun: unknown[] = [];
  private readonly ends = new Map<unknown, () => void>();

  find =
    async (name: string) =>
    async (asked: unknown, { goesOn, tell }: Job<unknown>) => {
      const { days } = asked as { days: number };
      this.begun.push(days);
      this.most = Math.max(this.most, ++this.running);
      let isOver = false;
      const over = new Promise<void>((resolve) => {
        this.ends.set(days, () => {
          isOver = true;
          resolve();
        });
      });
      tell({ hours: 1, of: days, partial: undefined });
      // What is worked out whole hears of no cancel.
      if (manners[name as keyof typeof manners].pace === 'whole') await over;
      else while (!isOver) if (!(await goesOn())) break;
      this.running--;
      if (days < 0) throw new RangeError('fewer days than none');
      return isOver ? name + days : undefined;
    };

  async end(days: number): Promise<void> {
    await vi.waitFor(() => expect(this.ends.has(days)).toBe(true));
    this.ends.get(days)!();
  }
  has = (days: number) => vi.waitFor(() => expect(this.begun).toContain(days));
}

function page(cores: number) {
  const works = new Works();
  const workshop = new Workshop(works.find);
  const pool = new Pool(workshop.open, cores);
  return { works, workshop, pool, asking: new Asking({ pool }) };
}
const trial = (days: number) => ({ ...tank, days });
/** Questions that are answered whole; what is asked does not matter to work that stands in. */
const log = (days: number) => ({ ...{ plan: tank, log: [], withinDkhPerDay: 0.1 }, days });

beforeEach(
  () => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'], shouldAdvanceTime: true }),
);
afterEach(() => void vi.useRealTimers());

describe('a question', () => {
  it('is superseded by a newer one under its key, and by no other', async () => {
    const { works, asking } = page(4);
    const [a, b] = [
      asking.ask('drill', trial(1), { key: 'a' }),
      asking.ask('drill', trial(2), { key: 'b' }),
    ];
    await works.has(2);
    const newer = asking.ask('drill', trial(3), { key: 'a' });
    expect(await a).toEqual({ kind: 'superseded' });
    await works.end(2);
    await works.end(3);
    expect([await b, await newer]).toMatchObject([{ value: 'drill2' }, { value: 'drill3' }]);
    expect(works.running).toBe(0);
  });

  it('that is a young trial is let finish; the newest waits for it, those between are dropped', async () => {
    const { works, asking } = page(2);
    const first = asking.ask('trial', trial(1));
    const [between, last] = [asking.ask('trial', trial(2)), asking.ask('trial', trial(3))];
    expect(await between).toEqual({ kind: 'superseded' });
    await works.end(1);
    expect(await first).toMatchObject({ value: 'trial1' });
    await works.end(3);
    expect(await last).toMatchObject({ value: 'trial3' });
    expect(works.begun).toEqual([1, 3]);
  });

  it('that is worked out whole ends with its worker when it is superseded or cancelled', async () => {
    const { works, workshop, asking } = page(2);
    const older = asking.ask('answer', log(1));
    await works.has(1);
    const newer = asking.ask('answer', log(2));
    expect(await older).toEqual({ kind: 'superseded' });
    await works.has(2);
    expect([workshop.opened, workshop.alive]).toEqual([2, 1]);
    asking.cancel('answer');
    expect(await newer).toEqual({ kind: 'cancelled' });
    expect(workshop.alive).toBe(0);
  });

  it('of a page that is left is ended, whether it runs or waits', async () => {
    const { works, asking, pool } = page(2);
    const asked = [1, 2, 3].map((day) => asking.ask('answer', log(day), { key: `${day}` }));
    await works.has(1);
    asking.leave();
    for (const answer of await Promise.all(asked)) expect(answer).toEqual({ kind: 'cancelled' });
    expect(works.begun).toEqual([1]);
    expect(pool.alive).toBe(0);
  });

  it('tells of itself while it is wanted, and not after', async () => {
    const { works, asking } = page(2);
    const told: unknown[] = [];
    const answer = asking.ask('trial', trial(1), { tell: ({ of }) => told.push(of) });
    await works.end(1);
    await answer;
    expect(told).toEqual([1]);
  });

  it('whose script is not there is an answer, not a wait, and the next is tried anew', async () => {
    const { works, workshop, asking } = page(2);
    workshop.opens = false;
    const answer = await asking.ask('trial', trial(1));
    expect(answer).toMatchObject({ kind: 'failed', failure: { code: 'notFetched' } });
    expect(answer.kind === 'failed' && answer.failure.message).toContain('could not be fetched');
    expect(workshop.alive).toBe(0);
    workshop.opens = true;
    const again = asking.ask('trial', trial(2));
    await works.end(2);
    expect(await again).toMatchObject({ value: 'trial2' });
  });

  it('whose worker cannot be made at all is an answer', async () => {
    const open = () => {
      throw new Error('workers are forbidden here');
    };
    const asking = new Asking({ pool: new Pool(open, 2) });
    expect(await asking.ask('trial', trial(1))).toMatchObject({
      ...{ kind: 'failed', failure: { message: 'workers are forbidden here' } },
    });
  });

  it('of which nothing is heard in its time is stopped and said; the page may say more', async () => {
    const { works, pool } = page(2);
    const asking = new Asking({ pool, tooLong: 'look at the dates' });
    const [own, usual] = [asking, new Asking({ pool })].map((one) => one.ask('answer', log(1)));
    await works.has(1);
    await vi.advanceTimersByTimeAsync(30_000);
    expect(await own).toMatchObject({ failure: { code: 'tooLong', message: 'look at the dates' } });
    // The other waited for the one worker meanwhile: its time begins now.
    await vi.waitFor(() => expect(works.begun).toHaveLength(2));
    await vi.advanceTimersByTimeAsync(30_000);
    expect(await usual).toMatchObject({ failure: { code: 'tooLong' } });
    const answer = await usual!;
    expect(answer.kind === 'failed' && answer.failure.message).toContain('for 30 seconds');
    expect(pool.alive).toBe(0);
  });

  it('that cannot be copied across, or answered, is a failure of its own and of no other', async () => {
    const { works, asking } = page(2);
    const good = asking.ask('trial', trial(1), { key: 'good' });
    const bad = { ...trial(2), no: () => {} };
    expect(await asking.ask('trial', bad, { key: 'bad' })).toMatchObject({ kind: 'failed' });
    const broken = asking.ask('trial', trial(-1), { key: 'broken' });
    await works.end(-1);
    expect(await broken).toMatchObject({ failure: { code: 'outOfRange' } });
    await works.end(1);
    expect(await good).toMatchObject({ value: 'trial1' });
  });
});

describe('the workers', () => {
  it.each([1, 2, 3, 4, 16])('are at most one a core of %i, whatever is asked', async (cores) => {
    const { works, workshop, asking } = page(cores);
    for (let day = 1; day <= 20; day++) {
      void asking.ask('trial', trial(day), { key: `t${day}` });
      void asking.ask('drill', trial(100 + day), { key: `d${day}` });
      void asking.ask('answer', log(200 + day), { key: `l${day}` });
    }
    await works.has(1);
    expect(workshop.alive).toBeLessThanOrEqual(cores);
    asking.leave();
    await vi.waitFor(() => expect(workshop.alive).toBeLessThanOrEqual(cores));
  });

  it('keep one for trials: a long calculation never stands in a drag’s way', async () => {
    const { works, asking } = page(2);
    for (const day of [1, 2]) void asking.ask('answer', log(day), { key: `${day}` });
    await works.has(1);
    const drag = asking.ask('trial', trial(9));
    await works.end(9);
    expect(await drag).toMatchObject({ value: 'trial9' });
    expect(works.begun).toEqual([1, 9]);
    asking.leave();
  });

  it('that are one alone break off a long calculation for a trial, and begin it again', async () => {
    const { works, workshop, asking } = page(1);
    const long = asking.ask('answer', log(1));
    await works.has(1);
    const drag = asking.ask('trial', trial(9));
    await works.end(9);
    expect(await drag).toMatchObject({ value: 'trial9' });
    await vi.waitFor(() => expect(works.begun).toEqual([1, 9, 1]));
    await works.end(1);
    expect(await long).toMatchObject({ value: 'answer1' });
    expect(workshop.alive).toBe(1);
  });

  it('share a question of many parts out between them, answered in the order of the parts', async () => {
    const { works, asking } = page(3);
    const heard: number[] = [];
    const parts = [11, 12, 13, 14].map((days) => ({ ...trial(days) }));
    const answer = share(asking, 'drill', parts, { onSome: (some) => heard.push(some.length) });
    await works.has(13);
    for (const [i, days] of [12, 13, 11, 14].entries()) {
      await works.end(days);
      await vi.waitFor(() => expect(heard.length).toBeGreaterThan(i));
    }
    expect(await answer).toMatchObject({ value: ['drill11', 'drill12', 'drill13', 'drill14'] });
    expect(heard).toEqual([1, 2, 3, 4]);
    expect(works.most).toBe(3);
    const cancelled = share(asking, 'drill', parts);
    asking.cancel('drill');
    expect(await cancelled).toEqual({ kind: 'cancelled' });
  });
});
