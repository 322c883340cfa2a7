import { expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { patience } from '../laws/size';
import { steeredLogs } from './anySteer';
import { missesOf } from './steerByHand';
import { breachesOf, type Breach } from './steerInTruth';

/** "10.6 g calcium chloride dihydrate each morning for 5 days", and every other gram and day that is named. */
const gramsOf = (text: string) => text.match(/[\d.]+ g [a-z ]+? (?:each morning|and)/g) ?? [];
const daysOf = (text: string) =>
  text.match(/(?:each morning for|For|inside after) \d+ days?/g) ?? [];
const litresOf = (text: string) =>
  text.match(/[\d.]+ L (?:a day|a week|\([\d.]+ %\) changed)/g) ?? [];

/** As near as that is the same: what the steer solves to, below what any kit tells. */
const SAME = { calcium: 1, magnesium: 3, salinity: 0.1 } as const;

type Asked = Awaited<ReturnType<typeof steeredLogs>>[number];
const LOWER = /Alkalinity ends [\d.]+ dKH (lower|higher) by it/;
/** A day's move is told, and is no larger; so near a test tells it. */
const SWINGS_DKH = 0.05;
const nothing = { endedBy: undefined, promisedDays: 0 };

/** Until when a raise that waits for the use is told: by its last morning it has been tested twice, and is turned. */
const raisedUntilH = ({ turn }: Asked): number =>
  turn.untilKnown?.kind === 'raise' ? turn.untilKnown.scenario.days * 24 : Infinity;

/** At ease only where each that was read stays inside while the turn is looked ahead. */
function expectEase({ one, plan }: Asked) {
  const { calciumMgPerL, magnesiumMgPerL, salinityPractical } = one.any.known.tank;
  const { limits } = plan;
  expect(calciumMgPerL).toBeGreaterThanOrEqual(limits.calciumLowMgPerL);
  expect(calciumMgPerL).toBeLessThanOrEqual(limits.calciumHighMgPerL);
  expect(magnesiumMgPerL).toBeGreaterThanOrEqual(limits.magnesiumLowMgPerL);
  expect(magnesiumMgPerL).toBeLessThanOrEqual(limits.magnesiumHighMgPerL);
  expect(salinityPractical).toBeGreaterThanOrEqual(limits.salinityLowPractical);
  expect(salinityPractical).toBeLessThanOrEqual(limits.salinityHighPractical);
}

it(
  'a turn and a season never name different grams, days or litres',
  async () => {
    for (const asked of await steeredLogs()) {
      const { steer, season, says, told } = asked;
      const text = says.join(' ');
      expect(text).not.toMatch(/NaN|undefined|Infinity/);
      for (const named of [gramsOf, daysOf, litresOf]) {
        for (const part of named(text)) expect(told).toContain(part);
      }
      const { steered } = steer;
      if (!steered) expectEase(asked);
      expect(steered?.first ?? season.season.first).toEqual(season.season.first);
      expect(steered?.weekly ?? season.season.weekly).toEqual(season.season.weekly);
    }
  },
  patience * 4,
);

it(
  'no line that is kept with nothing done is broken by a turn and what is done beside it, but as it is told',
  async () => {
    const breaches: string[] = [];
    let [turns, poured] = [0, 0];
    for (const asked of await steeredLogs()) {
      const { one, turn, steer, says } = asked;
      const { steered } = steer;
      turns += Number(turn.turn.kind === 'turn');
      if (!steered?.together) continue;
      poured++;
      const most = { ...emptyLog, mostMagnesiumMgPerLPerDay: one.mostMagnesiumMgPerLPerDay };
      const { first, together } = steered;
      const mornings = first.kind === 'first' ? first.stretch.untilDay : 0;
      const found = breachesOf(one, together.stretches, most);
      const { endedBy, promisedDays } = turn.turn.kind === 'turn' ? turn.turn.turned : nothing;
      // Where alkalinity passes a limit once the mornings are over, and what ends a turn, is told.
      const isTold = ({ id, quantity, firstH, worst }: Breach) =>
        (endedBy?.breach.id === id && firstH >= promisedDays * 24) ||
        (quantity === 'omega' && firstH > raisedUntilH(asked)) ||
        (quantity === 'alkalinityChange' && worst <= together.largestDailyDkh + SWINGS_DKH) ||
        says.some((text) => text.includes(`a change of your water moves ${id} by`)) ||
        together.leavesSooner.some(
          ({ id: own, day }) =>
            own === quantity &&
            firstH > (day - 1) * 24 &&
            says.some((text) => text.includes(`by it from day ${day} on`)),
        ) ||
        (quantity === 'alkalinity' &&
          firstH > mornings * 24 &&
          says.some((text) => text.includes('With it alkalinity may pass') || LOWER.test(text)));
      breaches.push(...found.flatMap((breach) => (isTold(breach) ? [] : [breach.text])));
    }
    console.log(`turns ${turns}, steered beside them ${poured}, breaches ${breaches.length}`);
    expect(breaches).toEqual([]);
    expect(poured).toBeGreaterThan(0);
  },
  patience * 4,
);

it(
  'beside its turn a steer ends as near to its targets as hand arithmetic, or nearer',
  async () => {
    const misses = (await steeredLogs()).flatMap(missesOf);
    const wins = misses.filter(({ id, steer, byHand }) => steer < byHand - SAME[id]);
    const lost = misses.filter(({ id, steer, byHand }) => steer > byHand + SAME[id]);
    console.log(
      `moved ${misses.length}: nearer than by hand ${wins.length}, the same ${misses.length - wins.length - lost.length}, farther ${lost.length}`,
    );
    expect(lost).toEqual([]);
    expect(misses.length).toBeGreaterThan(0);
  },
  patience * 4,
);
