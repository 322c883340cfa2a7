import { expect, it } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { cardCautions, stopRules } from '../../src/card/stopRules';
import { nextTestAt } from '../../src/card/nextTest';

const highTank = scenarioOf({
  type: 'paper-reef/scenario',
  version: 4,
  title: 'the grow-out trough of the nursery on Tamber Island',
  days: 28,
  tank: { volumeL: 900, alkalinityDkh: 10.3 },
  topOff: { additive: 'calciumHydroxide', gramsPerL: 1.4 },
  limits: { alkalinityLowDkh: 9.4, alkalinityHighDkh: 11.2, phHighNbs: 8.5 },
});

it('draws the stop rules from the tank’s own limits: 10.3 dKH is not told to stop at 10', () => {
  const rules = stopRules(highTank).join('\n');
  expect(rules).toContain('above 11.2 dKH, or pH above 8.5');
  expect(rules).toContain('below 9.4 dKH');
  expect(rules).not.toMatch(/\b(10|7|11) dKH/);
  expect(rules).toContain('unplug it with dry hands');
});

it('gives the cautions of what is in the plan', () => {
  expect(cardCautions(highTank).join(' ')).toContain('Gloves, goggles');
  const plain = { ...highTank, topOff: { ...highTank.topOff, additive: 'none' as const } };
  expect(cardCautions(plain).join(' ')).not.toContain('Calcium hydroxide');
  expect(cardCautions(plain).join(' ')).toContain('safety data sheet');
});

it('sets the next test within a week and the promise, sooner when the log asks for it', () => {
  const said = (endH: number, inDays: number) =>
    ({
      fit: { startAt: '2026-03-01T10:00', endH, points: [], leaps: [] },
      nextTest: { inDays },
    }) as unknown as Parameters<typeof nextTestAt>[2];
  const now = '2026-03-11T10:00';
  expect(nextTestAt(now, { promisedDays: 28, raising: false }, undefined)).toBe('2026-03-18T10:00');
  expect(nextTestAt(now, { promisedDays: 4, raising: false }, undefined)).toBe('2026-03-15T10:00');
  expect(nextTestAt(now, { promisedDays: 28, raising: false }, said(240, 3))).toBe(
    '2026-03-14T10:00',
  );
  expect(nextTestAt(now, { promisedDays: 28, raising: false }, said(24, 3))).toBe(now);
  expect(nextTestAt(now, { promisedDays: 28, raising: true }, undefined)).toBe('2026-03-13T10:00');
});
