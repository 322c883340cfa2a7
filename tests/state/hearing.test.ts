import { beforeEach, expect, it, vi } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { Autosave } from '../../src/store/autosave';
import { openingPlans } from '../../src/store/plans';
import { loadTanks, saveTank } from '../../src/store/store';
import { newTank, type Tank } from '../../src/store/tanks';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { freshBrowser } from './browser';

/** What is read is handed over only once this is over. */
let handedOver: Promise<void> = Promise.resolve();
const asked = vi.fn();

vi.mock('../../src/store/store', async (original) => {
  const real = await original<typeof import('../../src/store/store')>();
  const readSaved = async (id: string) => {
    const tank = await real.readSaved(id);
    asked();
    await handedOver;
    return tank;
  };
  return { ...real, readSaved };
});

const readings = [
  { at: '2026-03-01T10:30', alkalinityDkh: 8.4 },
  { at: '2026-03-02T10:30', alkalinityDkh: 8.1 },
];
const plans = openingPlans(scenarioFromFile('do-nothing.json'));
const withReadings = (kept: typeof readings): Tank => ({
  ...newTank('tank-1', 'Kelp hall', plans),
  log: { ...emptyLog, readings: kept },
});

beforeEach(freshBrowser);

it('what was read before a reading was deleted, and comes after, does not bring it back', async () => {
  await saveTank(withReadings(readings), undefined);
  const shown: Tank[] = [];
  const page = new Autosave({
    ...{ trouble: () => {}, removedElsewhere: () => {} },
    changedElsewhere: (tank) => shown.push(tank),
  });
  await page.restore();
  let handOver = () => {};
  handedOver = new Promise((resolve) => (handOver = resolve));
  new BroadcastChannel('paper-reef').postMessage('tank-1');
  await vi.waitFor(() => expect(asked).toHaveBeenCalled());
  page.soon(withReadings(readings.slice(0, 1)), 0);
  await new Promise((resolve) => setTimeout(resolve, 100));
  handOver();
  await vi.waitFor(async () => {
    const [saved] = (await loadTanks()).tanks;
    expect(saved!.log.readings).toEqual(readings.slice(0, 1));
  });
  expect(shown).toEqual([]);
});
