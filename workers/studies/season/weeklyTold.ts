import type { AdditiveId } from '../../../shared/species/additives';
import type { Stretch } from '../turn/replay';
import { metals, salts, type Metal } from './metals';
import type { SeasonId } from './quantity';
import type { Passed } from './seasonTank';
import {
  lastDkh,
  lastWeek,
  perWeekOf,
  SEASON_DAYS,
  type Changes,
  type Doses,
  type Leaves,
  type Weeks,
} from './weeks';

/** The water that is exchanged, L a week, and what it is mixed to. */
export interface Exchange {
  readonly litresPerWeek: number;
  /** One change and how often, where there are any; else all day long. */
  readonly litres: number;
  readonly everyDays: number;
  readonly salinityPractical: number;
  /**
   * Of the week's litres, so many are plain fresh water where the rest is mixed as the plan says;
   * below 0 where it has to be stronger.
   */
  readonly plainLPerWeek: number;
}

/** Poured each week, in so many parts. */
export interface WeeklyPoured {
  readonly additive: AdditiveId;
  readonly gramsPerWeek: number;
  readonly parts: number;
}

/** What holds the water over a season. */
export interface Weekly {
  /** Nothing has to be turned; or something; or salinity is held by nothing that was tried. */
  readonly kind: 'asIs' | 'turned' | 'cannot';
  readonly exchange: Exchange | undefined;
  /** Poured in a week, in so many parts. */
  readonly poured: Partial<Record<Metal, WeeklyPoured>>;
  /** Share of the bottles' salt of a metal that is left in, where they bring too much. */
  readonly leftIn: Partial<Record<Metal, number>>;
  /** Mean of the season's last week. */
  readonly ends: Readonly<Record<SeasonId, number>>;
  readonly notHeld: readonly Leaves[];
  /** What is held, or would be: calcium is not judged where alkalinity, which it follows, leaves soon. */
  readonly judged: readonly SeasonId[];
  /** Whole days in which what is held stays inside, and nothing else is passed, at every use that is possible. */
  readonly promisedDays: number;
  /** Alkalinity of the last week against that of the tank as it runs, dKH. */
  readonly alkalinityByDkh: number;
  /** What else ends them. */
  readonly passed: Passed | undefined;
  readonly stretches: readonly Stretch[];
}

/** What comes of changes and doses, replayed at every use that is possible. */
export function weeklyTold(
  weeks: Weeks,
  kind: Weekly['kind'],
  changes: Changes,
  doses: Doses,
  notHeld: readonly Leaves[],
): Weekly {
  const { tank, judged, mostPerDay, volumeL } = weeks;
  const stretches = weeks.stretches(changes, doses);
  const isHeld = (id: string) =>
    notHeld.every((leaves) => leaves.id !== id) && (id !== 'calcium' || judged.includes('calcium'));
  const runs = tank.uses.map((use) => ({ use, replay: tank.replay(stretches, use) }));
  const passed = runs
    .flatMap(({ use, replay }) => tank.passed(replay, SEASON_DAYS, mostPerDay, use))
    // Alkalinity is tested and turned all season: where it goes is told beside.
    .filter(
      ({ line, fast }) => line?.quantity !== 'alkalinity' && isHeld(line?.quantity ?? fast!.id),
    )
    .toSorted((a, b) => a.firstH - b.firstH)[0];
  const outDays = runs.flatMap(({ replay }) =>
    weeks.outOf(replay).flatMap(({ id, day }) => (isHeld(id) ? [day - 1] : [])),
  );
  const passedDay = Math.floor((passed?.firstH ?? Infinity) / 24);
  const [{ replay }] = runs as [(typeof runs)[number]];
  return {
    ...{ kind, passed, stretches, notHeld, judged },
    ...{ poured: pouredIn(weeks, doses), leftIn: leftOf(doses) },
    exchange: exchangeOf(weeks, changes, doses, volumeL),
    ends: lastWeek(replay),
    alkalinityByDkh: lastDkh(replay) - lastDkh(tank.leftAlone(SEASON_DAYS)),
    promisedDays: Math.min(SEASON_DAYS, passedDay, ...outDays),
  };
}

function pouredIn(weeks: Weeks, { gramsPerWeek }: Doses): Weekly['poured'] {
  const poured: Partial<Record<Metal, WeeklyPoured>> = {};
  for (const metal of metals) {
    const grams = gramsPerWeek[metal];
    if (grams <= 0) continue;
    const additive = salts[metal][0]!;
    poured[metal] = { additive, gramsPerWeek: grams, parts: weeks.partsOf(metal, grams) };
  }
  return poured;
}

const leftOf = ({ leftIn }: Doses): Weekly['leftIn'] =>
  Object.fromEntries(metals.filter((metal) => leftIn[metal] < 1).map((id) => [id, leftIn[id]]));

function exchangeOf(
  { tank }: Weeks,
  changes: Changes,
  { mixedTo }: Doses,
  volumeL: number,
): Exchange | undefined {
  const litresPerWeek = perWeekOf(changes, volumeL) * volumeL;
  if (litresPerWeek <= 0) return undefined;
  const own = tank.now.waterChanges.salinityPractical;
  return {
    ...{ litresPerWeek, litres: (changes.percent / 100) * volumeL },
    ...{ everyDays: changes.everyDays, salinityPractical: mixedTo },
    plainLPerWeek: litresPerWeek * (1 - mixedTo / own),
  };
}
