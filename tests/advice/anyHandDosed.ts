import fc from 'fast-check';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { gramsForDkh, gramsForMgPerL } from '../../shared/recipe/gramsFor';
import { threeFigures } from '../../shared/recipe/threeFigures';
import type { Carbonate } from '../../shared/recipe/twoPart';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { toDecimals } from '../../shared/units/digits';
import { run } from '../../workers/engine/run';
import { CLOCK_HOUR, evenly, START_H } from '../log/testedDaily';

const carbonates: readonly Carbonate[] = ['sodiumBicarbonate', 'sodiumCarbonate'];

/** Keepers who weigh a powder and pour it in, twice a day to every third, too little, enough or too much. */
export const anyHandDosed = fc.record({
  volumeL: evenly(30, 2000),
  useDkhPerDay: evenly(0.2, 2.5),
  dosedShare: evenly(0.3, 1.5),
  everyDays: fc.constantFrom(0.5, 1, 1, 1, 2, 3),
  /** The hour of the pour. */
  hour: fc.integer({ min: 0, max: 23 }),
  additive: fc.constantFrom(...carbonates),
  poursCalcium: fc.boolean(),
  startDkh: evenly(6, 11),
  tests: fc.integer({ min: 4, max: 14 }),
  targetDkh: evenly(7.6, 9.5),
  limitDkhPerDay: evenly(0.5, 1.4),
});

/** 0.35665 meq/L a dKH, two equivalents a mole of 40.078 g. */
const CALCIUM_MG_PER_DKH = (0.35665 / 2) * 40.078;

export interface HandDosed {
  /** As its keeper has typed it: nothing runs. */
  readonly plan: Scenario;
  /** The true tank, poured into while it was tested. */
  readonly truth: Scenario;
  readonly log: readonly Reading[];
  readonly values: readonly number[];
  readonly gramsEach: number;
  /** Where the water truly stands at the last test, dKH. */
  readonly endsDkh: number;
}

type Drawn = typeof anyHandDosed extends fc.Arbitrary<infer T> ? T : never;

/** Poured and tested daily, to 0.1 dKH, and all of it written down. */
export function handDosedTank(drawn: Drawn): HandDosed {
  const { volumeL, useDkhPerDay, dosedShare, everyDays, hour, additive, tests, startDkh } = drawn;
  const bare = scenarioOf({
    days: tests,
    tank: { volumeL, alkalinityDkh: toDecimals(startDkh, 1) },
    start: { clockHour: CLOCK_HOUR },
    limits: { alkalinityChangeDkhPerDay: drawn.limitDkhPerDay },
  });
  const dkhEach = dosedShare * useDkhPerDay * everyDays;
  const gramsEach = threeFigures(gramsForDkh(additive, dkhEach, volumeL));
  // Day 1 begins at the hour of the first test.
  const first = hour > CLOCK_HOUR ? 1 : 2;
  const midnightH = START_H - CLOCK_HOUR;
  const lastH = START_H + (tests - 1) * 24;
  // What its calcium is made of is poured in an hour later: as many moles as half the equivalents.
  const mgPerL = dkhEach * CALCIUM_MG_PER_DKH;
  const calcium = threeFigures(gramsForMgPerL('calciumChlorideDihydrate', 'Ca', mgPerL, volumeL));
  const pours = Math.ceil(tests / everyDays);
  const additions = Array.from({ length: pours }, (_, i) => {
    const hours = hour + i * everyDays * 24;
    return { day: first + Math.floor(hours / 24), hour: hours % 24 };
  }).flatMap(({ day, hour }) => [
    { day, hour, additive, grams: gramsEach },
    ...(drawn.poursCalcium
      ? [{ day, hour: hour + 0.9, additive: 'calciumChlorideDihydrate' as const, grams: calcium }]
      : []),
  ]);
  const truth = { ...bare, additions, corals: { ...bare.corals, useDkhPerDay } };
  const dkh = readColumn(run(truth).trace, 'alkalinity_dkh');
  const poured = additions.flatMap(({ day, grams, additive, hour }): Reading[] => {
    const atH = midnightH + (day - 1) * 24 + hour;
    return atH < lastH ? [{ at: localTimeOf(atH), additive, grams }] : [];
  });
  const read = Array.from({ length: tests }, (_, day): Reading => ({
    at: localTimeOf(START_H + day * 24),
    alkalinityDkh: toDecimals(dkh[day * 24]!, 1),
  }));
  return {
    ...{ plan: bare, truth, gramsEach, endsDkh: dkh[(tests - 1) * 24]! },
    log: [...read, ...poured].toSorted((a, b) => (a.at < b.at ? -1 : 1)),
    values: read.map(({ alkalinityDkh }) => alkalinityDkh!),
  };
}
