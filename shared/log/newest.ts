import { limitBands, type Band, type LimitId } from '../scenario/limitBands';
import type { Scenario } from '../scenario/schema';
import { hoursOf } from './localTime';
import { inOrder, type Reading } from './reading';

/** What of the water is read, and where a tank keeps it. */
const kept = {
  alkalinityDkh: 'alkalinityDkh',
  calciumMgPerL: 'calciumMgPerL',
  magnesiumMgPerL: 'magnesiumMgPerL',
  salinityPractical: 'salinityPractical',
  tempC: 'tempC',
  nitrateMgPerL: 'nitrateMgPerL',
  ammoniaMgPerL: 'ammoniaMgPerL',
  phosphateMgPerL: 'phosphateMgPerL',
} as const satisfies Partial<Record<keyof Reading, keyof Scenario['tank']>>;

const bandOf = {
  alkalinityDkh: 'alkalinity',
  phNbs: 'ph',
  calciumMgPerL: 'calcium',
  magnesiumMgPerL: 'magnesium',
  salinityPractical: 'salinity',
  tempC: 'temperature',
} as const satisfies Partial<Record<keyof Reading, LimitId>>;

/** The latest reading of one quantity. */
export interface Newest {
  readonly at: string;
  readonly value: number;
}

/** A newest reading that lies outside the keeper's limits. */
export interface Outside extends Newest {
  readonly band: Band;
}

/** The latest reading of a quantity; undefined where it was never read. */
export function newestOf(
  readings: readonly Reading[],
  name: keyof typeof kept | 'phNbs',
): Newest | undefined {
  const last = inOrder(readings).findLast((reading) => reading[name] !== undefined);
  return last && { at: last.at, value: last[name]! };
}

/** The plan with the newest known water: where whatever is asked of this tank begins. */
export function withNewestWater<S extends Pick<Scenario, 'start' | 'tank'>>(
  plan: S,
  readings: readonly Reading[],
): S {
  const names = Object.keys(kept) as (keyof typeof kept)[];
  const found = names.map((name) => [kept[name], newestOf(readings, name)?.value] as const);
  const known = Object.fromEntries(found.filter(([, value]) => value !== undefined));
  const lastAt = inOrder(readings).at(-1)?.at;
  const clockHour = lastAt === undefined ? plan.start.clockHour : Math.floor(hoursOf(lastAt)) % 24;
  return { ...plan, start: { ...plan.start, clockHour }, tank: { ...plan.tank, ...known } };
}

/** Every quantity whose newest reading is outside the keeper's limits. */
export function outsideNow({ limits }: Scenario, readings: readonly Reading[]): Outside[] {
  const bands = limitBands(limits);
  return (Object.keys(bandOf) as (keyof typeof bandOf)[]).flatMap((name) => {
    const newest = newestOf(readings, name);
    const band = bands.find(({ id }) => id === bandOf[name])!;
    return newest && (newest.value < band.low || newest.value > band.high)
      ? [{ ...newest, band }]
      : [];
  });
}

/** The newest reading, where it is dated so far after the one before that nothing else counts. */
export function farAhead(
  readings: readonly Reading[],
  windowDays: number,
): { readonly at: string; readonly days: number } | undefined {
  const [before, last] = inOrder(readings).slice(-2);
  if (!before || !last) return undefined;
  const days = (hoursOf(last.at) - hoursOf(before.at)) / 24;
  return days > windowDays ? { at: last.at, days } : undefined;
}
