import { scenarioOf } from '../../shared/scenario/write';
import type { Scenario, ScenarioFile } from '../../shared/scenario/schema';

type Part = Readonly<Record<string, unknown>>;
type Overrides = Partial<Omit<ScenarioFile, 'tank'>> & { tank?: Partial<ScenarioFile['tank']> };

const quiet: Part = {
  type: 'paper-reef/scenario',
  version: 4,
  title: 'a tank for a check',
  days: 1,
  tank: {
    volumeL: 300,
    alkalinityDkh: 8,
    tempC: 25,
    nitrateMgPerL: 0,
    phosphateMgPerL: 0,
    ammoniaMgPerL: 0,
  },
  corals: {
    useDkhPerDay: 0,
    growthPercentPerDay: 0,
    skeletonMgPerCa: 0,
    skeletonSrPerCa: 0,
    temperatureLaw: 'none',
  },
  photosynthesis: { grossMmolPerLPerDay: 0 },
  food: { gramsPerDay: 0 },
  evaporation: { litresPerDay: 0 },
  topOff: { reservoirL: 0, lossPercentPerDay: 0 },
  gas: { enhancement: 'off' },
  precipitation: { mode: 'off' },
};

const isPart = (value: unknown): value is Part =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export function merge(base: Part, over: Part): Part {
  const merged = Object.entries(over).map(([key, value]): [string, unknown] => {
    const below = base[key];
    return [key, isPart(below) && isPart(value) ? merge(below, value) : value];
  });
  return { ...base, ...Object.fromEntries(merged) };
}

/** A tank in which nothing happens but what the check switches on. */
export const quietTank = (overrides: Overrides = {}): Scenario =>
  scenarioOf(merge(quiet, overrides));
