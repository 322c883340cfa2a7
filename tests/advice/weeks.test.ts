import { expect, it } from 'vitest';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { usualOptions } from '../../workers/engine/simulation';
import { SeasonTank } from '../../workers/studies/season/seasonTank';
import { Weeks } from '../../workers/studies/season/weeks';
import { quietTank } from '../runs/quietTank';

const targets = { calcium: 430, magnesium: 1300 };
const aimed = (calciumMgPerL: number) => {
  const tank = new SeasonTank(quietTank({ tank: { calciumMgPerL } }), 0, usualOptions);
  return new Weeks(tank, { kind: 'none' }, targets, usualMostPerDay).aim.calcium;
};

it('calcium inside its band is held where it stands, and outside it is led to the target', () => {
  expect([390, 410, 440, 480].map(aimed)).toEqual([430, 410, 440, 430]);
});
