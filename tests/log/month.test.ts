import { expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { usualDisplay } from '../../shared/units/display';
import { dotsOf, everRead, type Dots } from '../../src/diary/month/monthQuantities';

const plan = scenarioOf({});
const atRest = ({ dots, reach: { rest } }: Dots) =>
  dots.flatMap(({ timeH, value }) => (timeH >= rest.fromH ? [value] : []));
const on = (day: string, read: object) => ({ at: `2026-${day}T10:00`, ...read });

it('what was read is offered, alkalinity first', () => {
  const readings = [on('03-01', { phosphateMgPerL: 0.02 }), on('03-02', { alkalinityDkh: 8 })];
  expect(everRead(readings)).toEqual(['alkalinityDkh', 'phosphateMgPerL']);
  expect(dotsOf('calciumMgPerL', readings, plan, usualDisplay)).toBeUndefined();
});

it('looks back a month, or as far as six readings reach, and no farther than a year', () => {
  const monthly = ['01-05', '02-05', '03-05', '04-05', '05-05', '06-05', '07-05'];
  const calcium = monthly.map((day, i) => on(day, { calciumMgPerL: 400 + i }));
  const readings = [...calcium, on('07-20', { alkalinityDkh: 8 })];
  const seen = dotsOf('calciumMgPerL', readings, plan, usualDisplay)!;
  expect(atRest(seen)).toEqual([401, 402, 403, 404, 405, 406]);
  expect(seen.dots).toHaveLength(7);
  expect(seen.band).toEqual([plan.limits.calciumLowMgPerL, plan.limits.calciumHighMgPerL]);
  const daily = Array.from({ length: 40 }, (_, i) => ({
    at: new Date(Date.UTC(2026, 3, 1 + i, 10)).toISOString().slice(0, 16),
    phNbs: 8 + i / 1000,
  }));
  expect(atRest(dotsOf('phNbs', daily, plan, usualDisplay)!)).toHaveLength(31);
  const rare = [on('01-01', { tempC: 25 }), { at: '2028-01-01T10:00', tempC: 25 }];
  expect(atRest(dotsOf('tempC', rare, plan, usualDisplay)!)).toHaveLength(1);
});

it('is written in the reader’s units', () => {
  const readings = [on('03-01', { tempC: 25, salinityPractical: 35 })];
  const display = { ...usualDisplay, temperature: '°F', salinity: 'SG' } as const;
  expect(dotsOf('tempC', readings, plan, display)).toMatchObject({
    ...{ unit: '°F', dots: [{ timeH: 0, value: 77 }] },
  });
  expect(dotsOf('salinityPractical', readings, plan, display)!.dots[0]!.value).toBeCloseTo(
    1.0264,
    3,
  );
});
