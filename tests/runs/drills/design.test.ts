import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { usualSpreads } from '../../../shared/verdict/spreads';
import { excessAt, largestKept, type DesignQuestion } from '../../../workers/studies/drill/design';
import { dumpAt, excess, withLever, worstHour } from '../../../workers/studies/drill/dump';
import { patience, runsOf } from '../../laws/size';
import { scenarioFromFile } from '../scenarioFiles';

const scenario = scenarioFromFile('drill-stuck-pump.json');
const question: DesignQuestion = {
  ...{ scenario, lever: 'reservoirL', lines: ['phHarm'], share: 0.95, members: 7, seed: 3 },
  ...{ spreads: usualSpreads, hour: 12 },
};
const goOn = async () => true;

describe('a drill put backwards', () => {
  it.each([
    ['reservoirL', ['phHarm']],
    ['gramsPerL', ['phHigh']],
    ['pumpLPerH', ['phHarm', 'alkalinityHigh']],
  ] as const)(
    'finds the largest %s that keeps the lines, as a brute-force grid finds it, to 1 %%',
    async (lever, lines) => {
      const asked = { ...question, lever, lines };
      const found = (await largestKept(asked, goOn))!;
      expect(found.largest).toBeDefined();
      // Every half per cent around the answer, and twice a decade far from it.
      const near = Array.from({ length: 21 }, (_, i) => found.largest! * (0.95 + i * 0.005));
      const kept = near.filter((value) => excessAt(asked, value) <= 0);
      expect(kept.length).toBeGreaterThan(0);
      expect(kept.length).toBeLessThan(near.length);
      expect(Math.abs(Math.max(...kept) / found.largest! - 1)).toBeLessThan(0.01);
      expect(excessAt(asked, found.largest! * 0.3)).toBeLessThan(0);
      expect(excessAt(asked, Math.min(found.largest! * 3, 400))).toBeGreaterThan(0);
    },
    patience,
  );

  it('says when everything keeps the lines, when nothing does, and stops when told', async () => {
    const easy = await largestKept({ ...question, lines: ['salinityHigh'] }, goOn);
    expect(easy?.unlimited).toBe(true);
    const limits = { ...scenario.limits, phHarmNbs: 8.0, phHighNbs: 8.0 };
    const hard = await largestKept({ ...question, scenario: { ...scenario, limits } }, goOn);
    expect(hard).toMatchObject({ largest: undefined, unlimited: false });
    expect(await largestKept(question, async () => false)).toBeUndefined();
  });

  it(
    'is worse with every litre and every gram of it, whatever the tank',
    () => {
      const levers = fc.constantFrom('reservoirL' as const, 'gramsPerL' as const);
      const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });
      fc.assert(
        fc.property(
          levers,
          range(50, 900),
          range(7, 11),
          range(0.3, 4),
          range(0.02, 0.4),
          range(1.1, 3),
          (lever, volumeL, alkalinityDkh, kLaPerH, part, factor) => {
            const tank = { ...scenario.tank, volumeL, alkalinityDkh };
            const plan = { ...scenario, tank, gas: { ...scenario.gas, kLaPerH } };
            const ranges = { reservoirL: volumeL / 5, gramsPerL: 1.4 };
            const value = (part * ranges[lever]) / 0.4 / factor;
            const at = (v: number) => excess(dumpAt(withLever(plan, lever, v), 12), ['phHarm']);
            expect(at(value * factor)).toBeGreaterThanOrEqual(at(value) - 1e-4);
          },
        ),
        runsOf(300),
      );
    },
    patience,
  );

  it('takes the hour of the day at which a dump is worst', () => {
    const hour = worstHour(scenario, ['phHarm']);
    const at = (clock: number) => excess(dumpAt(scenario, clock), ['phHarm']);
    for (const clock of [0, 6, 12, 18]) expect(at(hour)).toBeGreaterThanOrEqual(at(clock));
  });
});
