import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { solveGas } from '../../workers/studies/solveGas';

const tank = scenarioOf({
  days: 1,
  tank: { volumeL: 200, alkalinityDkh: 8 },
  corals: { useDkhPerDay: 0.6 },
  lights: { onHour: 8, hours: 12 },
});

const withGas = (kLaPerH: number, grossMmolPerLPerDay: number): Scenario => ({
  ...tank,
  gas: { ...tank.gas, kLaPerH },
  photosynthesis: { ...tank.photosynthesis, grossMmolPerLPerDay },
});

/** pH of a day that a tank settles to, at 8:00 and 20:00. */
function readOff(kLaPerH: number, gross: number): { on: number; off: number } {
  const ph = readColumn(run(withGas(kLaPerH, gross)).trace, 'ph_nbs');
  return { on: ph[8]!, off: ph[20]! };
}

const asked = (
  ph: { on: number; off: number },
  aeration: Scenario['gas']['aeration'],
): Scenario => ({
  ...tank,
  gas: { ...tank.gas, aeration, lightsOnPhNbs: ph.on, lightsOffPhNbs: ph.off },
});

describe('gas exchange and photosynthesis from two readings of pH', () => {
  it('are those of the tank that was read, where the word for its aeration fits', () => {
    // "skimmer" stands for 1.5 an hour.
    const found = solveGas(asked(readOff(1.5, 0.9), 'skimmer'));
    expect(found).toMatchObject({ kLaPerH: 1.5, grossMmolPerLPerDay: 0.9, explains: true });
  });

  it.each([
    // What each word stands for, an hour; trusted to a factor of two, and a reading to 0.05.
    ['rippled', 0.5, 1.6, 0.6],
    ['still', 0.15, 4, 1.6],
  ] as const)(
    'lie where readings and word pull evenly: "%s", %f for %f',
    (word, usual, kLa0, p0) => {
      const ph = readOff(kLa0, p0);
      const found = solveGas(asked(ph, word));
      const pull = (kLa: number, gross: number) => {
        const there = readOff(kLa, gross);
        const parts = [
          (there.on - ph.on) / 0.05,
          (there.off - ph.off) / 0.05,
          Math.log2(kLa / usual),
        ];
        return parts.reduce((sum, part) => sum + part ** 2, 0);
      };
      const { kLaPerH, grossMmolPerLPerDay: gross } = found;
      const least = pull(kLaPerH, gross);
      for (const [a, b] of [
        [1.12, 1],
        [1 / 1.12, 1],
        [1, 1.12],
        [1, 1 / 1.12],
        [1.12, 1.12],
        [1 / 1.12, 1 / 1.12],
      ] as const) {
        expect(pull(kLaPerH * a, gross * b)).toBeGreaterThan(least);
      }
      expect(kLaPerH).toBeGreaterThan(usual);
      expect(kLaPerH).toBeLessThan(kLa0);
      const { on, off } = readOff(kLaPerH, gross);
      expect([found.lightsOnPhNbs, found.lightsOffPhNbs]).toEqual([
        expect.closeTo(on, 4),
        expect.closeTo(off, 4),
      ]);
    },
  );
});

it('is as near as can be to readings that no setting explains', () => {
  const scenario = scenarioOf({
    gas: { aeration: 'still', lightsOnPhNbs: 8.1, lightsOffPhNbs: 8.5 },
    room: { co2Ppm: 1200 },
  });
  const { kLaPerH, lightsOnPhNbs, lightsOffPhNbs, explains } = solveGas(scenario);
  // In σ of a probe and of the word "still"; a hand-written search stopped at 117.
  const off = [(lightsOnPhNbs - 8.1) / 0.05, (lightsOffPhNbs - 8.5) / 0.05];
  const word = Math.log(kLaPerH / 0.15) / Math.LN2;
  expect(explains).toBe(false);
  expect(Math.hypot(...off, word) ** 2).toBeLessThan(103);
});
