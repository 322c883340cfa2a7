import { expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { gathered } from '../../src/charts/gathered';
import { marksOf } from '../../src/diary/marksOf';

it('everything that happened is on the month, in order, at its hour', () => {
  const day = (number: number) => `2026-05-0${number}T10:00`;
  const readings = [
    { at: day(1), alkalinityDkh: 8.4, lot: 'A' },
    { at: day(2), additive: 'sodiumBicarbonate' as const, grams: 5 },
    { at: day(3), alkalinityDkh: 8.3, lot: 'B', waterChangePercent: 10 },
    { at: day(5), coralsPercent: -33 },
    { at: day(6), event: 'cleaned' as const, equipment: 'skimmer', notes: 'wet sock' },
    { at: day(7), notes: 'polyps shut' },
  ];
  const ran = [{ until: day(4), plan: scenarioOf({}) }];
  expect(marksOf(readings, ran, day(1)).map(({ timeH, text }) => [timeH / 24, text])).toEqual([
    [1, '5 g sodium bicarbonate'],
    [2, '10 % new water'],
    [2, 'bottle B'],
    [3, 'turned'],
    [4, 'corals −33 %'],
    [5, 'skimmer: cleaned. wet sock'],
    [6, 'polyps shut'],
  ]);
});

it('notes that stand too near for a finger are read in one place, and no place is nearer', () => {
  const at = [10, 20, 30, 60, 200, 212, 260];
  const places = gathered(at, (px) => px, 26);
  expect(places.flatMap(({ together }) => together)).toEqual(at);
  const middles = places.map((place) => place.at);
  middles.slice(1).forEach((px, i) => expect(px - middles[i]!).toBeGreaterThanOrEqual(26));
  expect(middles).toEqual([20, 60, 206, 260]);
});
