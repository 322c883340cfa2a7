import fc from 'fast-check';
import { expect, it } from 'vitest';
import { keepable } from '../../shared/scenario/keepable';
import { parseScenarioText } from '../../shared/scenario/parse';
import { MOST_ADDITIONS } from '../../shared/scenario/schema';
import { scenarioOf, scenarioText } from '../../shared/scenario/write';

const bare = scenarioOf({});
const poured = (day: number, hour: number) => ({
  ...{ day, hour, grams: 2, additive: 'sodiumBicarbonate' as const },
});

it('a trial with however much poured in by hand can be kept and read again', () => {
  const anyPours = fc.record({
    days: fc.integer({ min: 1, max: 120 }),
    timesADay: fc.integer({ min: 1, max: 6 }),
    pouredDays: fc.integer({ min: 1, max: 90 }),
    clockHour: fc.integer({ min: 0, max: 23 }),
  });
  fc.assert(
    fc.property(anyPours, ({ days, timesADay, pouredDays, clockHour }) => {
      const all = Array.from({ length: pouredDays * timesADay }, (_, i) =>
        poured(1 + Math.floor(i / timesADay), (24 / timesADay) * (i % timesADay)),
      ).filter(({ day, hour }) => day > 1 || hour >= clockHour);
      const trial = { ...bare, days, start: { ...bare.start, clockHour }, additions: all };
      const scenario = keepable(trial);
      expect(scenario.additions.length).toBeLessThanOrEqual(MOST_ADDITIONS);
      expect(scenario.days).toBeGreaterThan(0);
      const read = parseScenarioText(scenarioText(scenario));
      expect(read).toMatchObject({ ok: true });
      // Nothing that is poured before its end is missing.
      const endH = scenario.days * 24 + clockHour;
      const before = all.filter(({ day, hour }) => (day - 1) * 24 + hour < endH);
      expect(scenario.additions.length).toBeGreaterThanOrEqual(before.length);
      if (all.length <= MOST_ADDITIONS) expect(scenario.days).toBe(days);
    }),
  );
  expect(keepable(bare)).toBe(bare);
});
