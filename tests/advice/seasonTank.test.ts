import { expect, it } from 'vitest';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { usualOptions } from '../../workers/engine/simulation';
import { columnOf, SeasonTank } from '../../workers/studies/season/seasonTank';
import type { Replay } from '../../workers/studies/turn/replay';
import { quietTank } from '../runs/quietTank';

const DAYS = 20;

/** Calcium stands at 420 mg/L until an hour, and higher from then on. */
const leaping = (byMgPerL: number, fromH: number) => {
  const leap = Array.from({ length: DAYS * 24 + 1 }, (_, h) => 420 + (h < fromH ? 0 : byMgPerL));
  const hourly: Replay['hourly'] = (column) =>
    leap.map((v) => (column === columnOf.calcium ? v : 35));
  return { lines: [], hourly } as unknown as Replay;
};

it('calcium that moves faster in a day than it may is told with the hour at which it does', () => {
  const tank = new SeasonTank(quietTank(), 0, usualOptions);
  const passed = (replay: Replay) => tank.passed(replay, DAYS, usualMostPerDay, 0, leaping(0, 0));
  expect(passed(leaping(60, 240))).toEqual([
    { line: undefined, fast: { id: 'calcium', by: 60 }, firstH: 240 },
  ]);
  expect(passed(leaping(19, 240))).toEqual([]);
});
