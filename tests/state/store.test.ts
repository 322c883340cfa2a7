import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { SCENARIO_VERSION } from '../../shared/scenario/schema';
import { asideRecords, forgetAside } from '../../src/store/aside';
import { Autosave } from '../../src/store/autosave';
import { leaveBehind } from '../../src/store/leaving';
import { openingPlans, replacing } from '../../src/store/plans';
import { loadTanks, saveTank } from '../../src/store/store';
import { newTank, type Tank } from '../../src/store/tanks';
import { withValue } from '../../shared/scenario/change';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { freshBrowser, openAs, put } from './browser';

const NOW = SCENARIO_VERSION + 1;
const plans = openingPlans(scenarioFromFile('do-nothing.json'));
const readings = [
  { at: '2026-03-01T10:30', alkalinityDkh: 8.4 },
  { at: '2026-03-02T10:30', alkalinityDkh: 8.1 },
];
const tank: Tank = { ...newTank('tank-1', 'Kelp hall', plans), log: { ...emptyLog, readings } };

const useOf = ({ bench }: Tank) => bench.plans[1]!.scenario.corals.useDkhPerDay;
const using = (of: Tank, useDkhPerDay: number): Tank => {
  const { id, scenario } = of.bench.plans[1]!;
  const changed = withValue(scenario, ['corals', 'useDkhPerDay'], useDkhPerDay);
  return { ...of, bench: replacing(of.bench, id, { scenario: changed }) };
};
const loaded = async (id = 'tank-1') => (await loadTanks()).tanks.find((one) => one.id === id)!;

const nobody = { trouble: () => {}, changedElsewhere: () => {}, removedElsewhere: () => {} };

beforeEach(freshBrowser);
afterEach(() => vi.useRealTimers());

describe('an edit at closing', () => {
  it('is there on every later visit, not on the first alone', async () => {
    const { tank: saved } = await saveTank(tank, undefined);
    leaveBehind(using(saved, 2), saved);
    expect(useOf(await loaded())).toBe(2);
    expect(useOf(await loaded())).toBe(2);
    expect(localStorage.length).toBe(0);
  });

  it('left by 0.6.0 is there on every later visit', async () => {
    const { tank: saved } = await saveTank(tank, undefined);
    localStorage.setItem('paper-reef', JSON.stringify(using(saved, 2)));
    expect(useOf(await loaded())).toBe(2);
    expect(useOf(await loaded())).toBe(2);
  });

  it('of sixty tanks at once leaves sixty', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const page = new Autosave(nobody);
    await page.restore();
    for (let i = 0; i < 60; i++) {
      const one = { ...tank, id: `tank-${i}`, name: `bath ${i}` };
      page.begin(one);
      page.soon(one);
    }
    page.beforeLeaving();
    expect((await loadTanks()).tanks).toHaveLength(60);
    expect((await loadTanks()).tanks).toHaveLength(60);
  });

  it('of two windows at once keeps what each has changed', async () => {
    const { tank: saved } = await saveTank(tank, undefined);
    leaveBehind(using(saved, 2), saved);
    const more = { at: '2026-03-03T10:30', alkalinityDkh: 7.9 };
    const other = { ...saved, log: { ...saved.log, readings: [...readings, more] } };
    const left = JSON.stringify({ tank: other, base: saved });
    localStorage.setItem('paper-reef unsaved another-window tank-1', left);
    const found = await loaded();
    expect(useOf(found)).toBe(2);
    expect(found.log.readings).toEqual([...readings, more]);
  });

  it('does not overwrite what the page saved after all', async () => {
    const page = new Autosave(nobody);
    await page.restore();
    page.begin(tank);
    page.soon(using(tank, 2));
    page.beforeLeaving();
    page.soon(using(tank, 3));
    await vi.waitFor(() => expect(localStorage.length).toBe(0), { timeout: 5000 });
    expect(useOf(await loaded())).toBe(3);
  });
});

describe('what cannot be read', () => {
  const bad = { id: 'tank-1', name: 'Kelp hall', bench: { plans: [1] }, log: tank.log };

  it('is put aside whole, each record once, and none takes the place of another', async () => {
    await put(2, 'tanks', { 'tank-1': bad, 'tank-2': 'nonsense' });
    expect((await loadTanks()).setAside).toBe(true);
    expect((await loadTanks()).setAside).toBe(false);
    await put(NOW, 'tanks', { 'tank-3': { id: 'tank-3', later: true }, 'tank-1': bad });
    expect((await loadTanks()).setAside).toBe(true);
    const texts = (await asideRecords()).map(([, { text }]) => text);
    expect(texts.map((text) => text.slice(0, 40)).sort()).toHaveLength(3);
    expect(texts.some((text) => text.includes('"later": true'))).toBe(true);
    expect(texts.some((text) => text === 'nonsense')).toBe(true);
    expect(JSON.parse(texts.find((text) => text.includes('Kelp hall'))!)).toEqual(bad);
  });

  it('says where and why, and goes only when it is told to', async () => {
    await put(2, 'tanks', { 'tank-1': bad });
    await loadTanks();
    const [[key, { tank: name, why, at }]] = (await asideRecords()) as [
      Awaited<ReturnType<typeof asideRecords>>[number],
    ];
    expect(name).toBe('Kelp hall');
    expect(why.join()).toContain("Today's plan: type (kind of file)");
    expect(at).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d$/);
    await forgetAside(key);
    expect(await asideRecords()).toEqual([]);
  });

  it('hides no sound reading, and the next edit loses nothing', async () => {
    await put(2, 'tanks', { 'tank-1': bad });
    const found = await loaded();
    expect(found.log.readings).toEqual(readings);
    await saveTank({ ...found, name: 'Kelp hall, again' }, found);
    expect((await loaded()).log.readings).toEqual(readings);
    const [[, { text }]] = (await asideRecords()) as [Awaited<ReturnType<typeof asideRecords>>[0]];
    expect(JSON.parse(text)).toEqual(bad);
  });

  it('is not written over by a window that had read it while it was sound', async () => {
    const { tank: saved } = await saveTank(tank, undefined);
    await put(NOW, 'tanks', { 'tank-1': bad });
    const { setAside } = await saveTank(using(saved, 2), saved);
    expect(setAside).toBe(true);
    expect((await asideRecords()).map(([, { text }]) => JSON.parse(text))).toEqual([bad]);
    expect((await loaded()).log.readings).toEqual(readings);
  });

  it('of a closing page is kept as its text', async () => {
    localStorage.setItem('paper-reef', '{"id":"tank-1","bench":{"plans":[{"na');
    expect((await loadTanks()).setAside).toBe(true);
    expect((await asideRecords()).map(([, { text }]) => text)).toEqual([
      '{"id":"tank-1","bench":{"plans":[{"na',
    ]);
  });

  it('as 0.6.0 had put it aside is still there', async () => {
    await put(2, 'bench', { 'set aside': [bad, { other: 1 }] });
    await loadTanks();
    const texts = (await asideRecords()).map(([, { text }]) => JSON.parse(text));
    expect(texts).toEqual([{ other: 1 }, bad]);
  });
});

describe('what cannot be saved', () => {
  it('is tried again by itself, and the notice goes once it is saved', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    const notices: string[] = [];
    const page = new Autosave({ ...nobody, trouble: (notice) => notices.push(notice) });
    await page.restore();
    page.begin(tank);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    page.soon(using(tank, 2), 0);
    await vi.advanceTimersByTimeAsync(10);
    await vi.waitFor(() => expect(notices).toEqual([expect.stringContaining('Nothing could be')]));
    put.mockRestore();
    await vi.waitFor(async () => {
      await vi.advanceTimersByTimeAsync(1000);
      expect(notices.at(-1)).toBe('');
    });
    expect(useOf(await loaded())).toBe(2);
  });
});

describe('windows of two versions', () => {
  it('an older one is refused the database of a newer', async () => {
    await saveTank(tank, undefined);
    await expect(openAs(2)).rejects.toMatchObject({ name: 'VersionError' });
  });

  it('this one over a newer database says so, and writes nothing', async () => {
    const notices: string[] = [];
    const page = new Autosave({ ...nobody, trouble: (notice) => notices.push(notice) });
    await put(NOW + 1, 'tanks', { 'tank-1': { id: 'tank-1', newer: true } });
    expect(await page.restore()).toEqual([]);
    expect(notices).toEqual([expect.stringContaining('A newer Paper Reef')]);
    page.soon(tank);
    page.beforeLeaving();
    expect(localStorage.length).toBe(0);
  });

  it('one that was open when the newer came says so, and leaves its edit for it', async () => {
    const notices: string[] = [];
    const page = new Autosave({ ...nobody, trouble: (notice) => notices.push(notice) });
    await page.restore();
    page.begin(tank);
    await put(NOW + 1, 'tanks', {});
    page.soon(using(tank, 2));
    await vi.waitFor(
      () => expect(notices).toEqual([expect.stringContaining('A newer Paper Reef')]),
      { timeout: 5000 },
    );
    page.beforeLeaving();
    expect(localStorage.length).toBe(1);
  });
});

const folder = new URL('../border/releases/', import.meta.url);
describe.each(readdirSync(folder))('a browser last used with %s', (release) => {
  const file = (name: string) => new URL(`${release}/${name}`, folder);
  const read = (name: string) => JSON.parse(readFileSync(file(name), 'utf8')) as unknown;

  it('opens, is edited, and reloads twice with nothing lost', async () => {
    if (existsSync(file('tank.json'))) await put(2, 'tanks', { 'tank-1': read('tank.json') });
    else await put(1, 'bench', { plans: read('bench.json') });
    const { tanks, setAside } = await loadTanks();
    expect([tanks.length, setAside]).toEqual([1, false]);
    const edited = using(tanks[0]!, 2.2);
    await saveTank(edited, tanks[0]);
    for (let reload = 0; reload < 2; reload++) {
      const { tanks: again, setAside: spoilt } = await loadTanks();
      expect(again).toEqual([{ ...edited, edition: expect.any(String) }]);
      expect(spoilt).toBe(false);
    }
    expect(await asideRecords()).toEqual([]);
  });

  it('left at closing opens as well, and stays', async () => {
    const name = existsSync(file('tank.json')) ? 'tank.json' : 'bench.json';
    localStorage.setItem('paper-reef', JSON.stringify(read(name)));
    for (let visit = 0; visit < 2; visit++) {
      const found = await loaded();
      expect(found.bench.plans).toHaveLength(3);
      expect(found.bench.plans[1]!.scenario.topOff.gramsPerL).toBe(1.15);
    }
    expect(localStorage.length).toBe(0);
  });
});
