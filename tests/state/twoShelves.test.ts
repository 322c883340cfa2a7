import { beforeEach, describe, expect, it, vi } from 'vitest';
import { Bench } from '../../src/bench/bench.svelte';
import { example } from '../../src/store/example';
import { asideRecords, type Aside } from '../../src/store/aside';
import { TANKS, withDatabase } from '../../src/store/database';
import { loadTanks, readSaved, saveTank } from '../../src/store/store';
import type { Tank } from '../../src/store/tanks';
import { TankShelf } from '../../src/shelf/tankShelf.svelte';
import { freshBrowser } from './browser';

/** A window: its bench and its shelf, over the one database and the one channel of this process. */
async function open() {
  const bench = new Bench(example);
  const shelf = new TankShelf(bench);
  await shelf.restore();
  return { bench, shelf };
}
const soon = (check: () => void) => vi.waitFor(check, { timeout: 10_000, interval: 20 });
const reading = (day: number, alkalinityDkh: number) => ({
  at: `2026-03-0${day}T10:30`,
  alkalinityDkh,
});

beforeEach(freshBrowser);

describe('a tank that was removed', () => {
  const kept = async () => (await loadTanks()).tanks.map(({ name }) => name);

  it('is gone after a reload, and there again once it was brought back, with all that it held', async () => {
    const { shelf, bench } = await open();
    shelf.log.add([reading(1, 8.4)]);
    shelf.add('The north basin', bench.plans.today.scenario);
    await soon(async () => expect(await kept()).toHaveLength(2));
    const [first] = shelf.tanks;
    shelf.log.add([reading(2, 9.3)]);
    const basin = shelf.current;
    await shelf.remove(basin.id);
    expect([shelf.current.id, await kept()]).toEqual([first!.id, [first!.name]]);
    shelf.bringBack();
    expect(shelf.current).toEqual(basin);
    expect(shelf.log.readings).toEqual([reading(2, 9.3)]);
    expect(shelf.removed).toBeUndefined();
    await soon(async () => expect(await kept()).toEqual([first!.name, 'The north basin']));
    const again = (await open()).shelf;
    again.open(basin.id);
    expect(again.log.readings).toEqual([reading(2, 9.3)]);
  });

  it('is back in the same breath in which it went, and stays', async () => {
    const { shelf, bench } = await open();
    shelf.log.add([reading(1, 8.4)]);
    shelf.add('The north basin', bench.plans.today.scenario);
    await soon(async () => expect(await kept()).toHaveLength(2));
    const going = shelf.remove(shelf.current.id);
    shelf.bringBack();
    await going;
    await soon(async () => expect(await kept()).toHaveLength(2));
    expect(shelf.tanks).toHaveLength(2);
  });

  it('has all that it held though another window wrote meanwhile what it still had of it', async () => {
    const { shelf, bench } = await open();
    shelf.log.add([reading(1, 8.4)]);
    shelf.add('The north basin', bench.plans.today.scenario);
    shelf.log.add([reading(2, 9.3)]);
    const older = shelf.current;
    shelf.log.add([reading(3, 9.1)]);
    const { id } = older;
    const held = async () =>
      (await loadTanks()).tanks.find((one) => one.id === id)?.log.readings.map(({ at }) => at);
    await soon(async () => expect(await held()).toHaveLength(2));
    await shelf.remove(id);
    await saveTank(
      { ...older, log: { ...older.log, readings: [reading(4, 8.9), reading(2, 9.3)] } },
      older,
    );
    shelf.bringBack();
    await soon(async () => expect(await held()).toContain(reading(3, 9.1).at));
    expect(await held()).toEqual([2, 3, 4].map((day) => reading(day, 9).at));
  });

  it('goes in the other window too, with a sentence, and can be brought back there', async () => {
    const [one, two] = [await open(), await open()];
    one.shelf.log.add([reading(1, 8.4)]);
    one.shelf.add('The north basin', one.bench.plans.today.scenario);
    await soon(() => expect(two.shelf.tanks).toHaveLength(2));
    const basin = one.shelf.current;
    two.shelf.open(basin.id);
    await one.shelf.remove(basin.id);
    await soon(() => expect(two.shelf.tanks).toHaveLength(1));
    expect(two.shelf.current.id).toBe('tank-1');
    expect(two.shelf.notice).toContain('“The north basin” was removed in another window');
    two.shelf.bringBack();
    await soon(() => expect(one.shelf.tanks).toHaveLength(2));
    expect([one.shelf.removed, await kept()]).toEqual([
      undefined,
      [expect.any(String), basin.name],
    ]);
  });

  it('holding more than its window had seen is put aside, with a sentence', async () => {
    const { shelf, bench } = await open();
    shelf.log.add([reading(1, 8.4)]);
    shelf.add('The north basin', bench.plans.today.scenario);
    await soon(async () => expect(await kept()).toHaveLength(2));
    const basin = (await readSaved(shelf.current.id)) as Tank;
    const log = { ...basin.log, readings: [reading(2, 9.3)] };
    await saveTank({ ...basin, log }, basin);
    await shelf.remove(basin.id);
    expect(shelf.notice).toContain('Another window had written into “The north basin” since');
    const [[, aside]] = (await asideRecords()) as [[number, Aside]];
    expect(JSON.parse(aside.text)).toMatchObject({ log: { readings: [reading(2, 9.3)] } });
  });

  it('is not what a tank is taken for that cannot be read', async () => {
    const [one, two] = [await open(), await open()];
    one.shelf.log.add([reading(1, 8.4)]);
    one.shelf.add('The north basin', one.bench.plans.today.scenario);
    await soon(() => expect(two.shelf.tanks).toHaveLength(2));
    await withDatabase((db) => db.put(TANKS, 'not a tank', one.shelf.current.id));
    new BroadcastChannel('paper-reef').postMessage(one.shelf.current.id);
    await new Promise((resolve) => setTimeout(resolve, 100));
    expect(two.shelf.tanks).toHaveLength(2);
  });
});

describe('what is kept', () => {
  it('is there again in the order in which it came', async () => {
    const { shelf, bench } = await open();
    shelf.log.add([reading(1, 8.4)]);
    const names = Array.from({ length: 12 }, (_, i) => `basin ${i}`);
    for (const name of names) shelf.add(name, bench.plans.today.scenario);
    await soon(async () => expect((await loadTanks()).tanks).toHaveLength(13));
    const again = (await open()).shelf;
    expect(again.tanks.slice(1).map(({ name }) => name)).toEqual(names);
  });

  it('has what was changed before the store had answered', async () => {
    const shelf = new TankShelf(new Bench(example));
    const restoring = shelf.restore();
    shelf.log.add([reading(1, 8.4)]);
    await restoring;
    await soon(async () => {
      expect((await loadTanks()).tanks[0]?.log.readings).toEqual([reading(1, 8.4)]);
    });
  });
});

describe('a reading', () => {
  it('that was typed before the store had answered goes into the log that opens', async () => {
    const { shelf } = await open();
    shelf.log.add([reading(1, 8.4)]);
    await soon(async () => expect((await loadTanks()).tanks).toHaveLength(1));
    const quick = new TankShelf(new Bench(example));
    const restoring = quick.restore();
    quick.log.add([reading(2, 8.1)]);
    await restoring;
    expect(quick.log.readings).toEqual([reading(1, 8.4), reading(2, 8.1)]);
    await soon(async () => {
      expect((await loadTanks()).tanks[0]?.log.readings).toHaveLength(2);
    });
  });

  it('is changed though another window has taken it out meanwhile', async () => {
    const { shelf } = await open();
    shelf.log.add([reading(1, 8.4)]);
    const [old] = shelf.log.readings;
    shelf.log.remove(old!);
    shelf.log.replace(old!, reading(1, 8.6));
    expect(shelf.log.readings).toEqual([reading(1, 8.6)]);
  });
});

describe('two windows on one tank', () => {
  it('undo each its own lever of one trial', async () => {
    const [one, two] = [await open(), await open()];
    one.bench.plans.set(['topOff', 'gramsPerL'], 1.3);
    await soon(() => expect(two.bench.plans.all[1]!.scenario.topOff.gramsPerL).toBe(1.3));
    two.bench.plans.set(['tank', 'volumeL'], 500);
    await soon(() => expect(one.bench.plans.all[1]!.scenario.tank.volumeL).toBe(500));
    one.bench.plans.edits.undo();
    await soon(() => expect(two.bench.plans.all[1]!.scenario.topOff.gramsPerL).toBe(0.9));
    expect(one.bench.plans.all[1]!.scenario.tank.volumeL).toBe(500);
    expect(two.bench.plans.all[1]!.scenario.tank.volumeL).toBe(500);
  });

  it('keep the undo of each, whatever the other saves', async () => {
    const [one, two] = [await open(), await open()];
    one.bench.plans.set(['topOff', 'gramsPerL'], 1.3);
    await soon(() => expect(two.bench.plans.all[1]!.scenario.topOff.gramsPerL).toBe(1.3));
    one.shelf.log.add([reading(1, 8.4)]);
    await soon(() => expect(two.shelf.log.readings).toHaveLength(1));
    two.shelf.log.add([reading(2, 8.1)]);
    await soon(() => expect(one.shelf.log.readings).toHaveLength(2));
    expect([one.bench.plans.edits.canUndo, one.shelf.log.edits.canUndo]).toEqual([true, true]);
    one.bench.plans.edits.undo();
    one.shelf.log.edits.undo();
    await soon(() => {
      expect(two.bench.plans.all[1]!.scenario.topOff.gramsPerL).toBe(0.9);
      expect(two.shelf.log.readings).toEqual([reading(2, 8.1)]);
    });
  });

  it('agree on what it runs by, though both have tried something meanwhile', async () => {
    const [one, two] = [await open(), await open()];
    one.bench.plans.set(['tank', 'volumeL'], 500);
    await soon(() => expect(two.bench.plans.all[1]!.scenario.tank.volumeL).toBe(500));
    one.bench.realTank.makeToday();
    await soon(() => expect(two.bench.plans.today.scenario.tank.volumeL).toBe(500));
    two.bench.plans.keep();
    two.bench.plans.set(['topOff', 'gramsPerL'], 1.3);
    await soon(() => expect(one.bench.plans.all).toHaveLength(3));
    const third = await open();
    expect(third.bench.plans.now.since).not.toBe('');
    expect(third.bench.plans.today.scenario.tank.volumeL).toBe(500);
    expect(third.shelf.tanks).toHaveLength(1);
    expect(third.shelf.current.name).toBe('My tank');
  });

  it('each add a tank of their own, and both are kept', async () => {
    const [one, two] = [await open(), await open()];
    one.shelf.add('north bath', example);
    two.shelf.add('south bath', { ...example, days: 20 });
    const names = (shelf: TankShelf) => shelf.tanks.map(({ name }) => name);
    await soon(async () => {
      const third = await open();
      expect(names(third.shelf)).toEqual(expect.arrayContaining(['north bath', 'south bath']));
    });
  });
});
