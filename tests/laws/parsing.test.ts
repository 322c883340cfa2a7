import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseScenario, parseScenarioText, type Parsed } from '../../shared/scenario/parse';
import { sentence } from '../../shared/scenario/sentence';
import { scenarioText } from '../../shared/scenario/write';
import { anyScenario } from './anyScenario';
import { badScenarios } from './badScenarios';
import { patience, runsOf } from './size';
import { spoilt } from './spoilt';

/** Either a whole scenario, or at least one problem that says all five things. */
function expectAnAnswer(parsed: Parsed): void {
  if (parsed.ok) return;
  expect(parsed.problems.length).toBeGreaterThan(0);
  for (const problem of parsed.problems) {
    for (const part of Object.values(problem)) expect(part).not.toBe('');
    expect(sentence(problem).length).toBeLessThan(2000);
  }
}

describe('a scenario file', () => {
  it.each(badScenarios)('with $name is refused, with the place and a way out', (bad) => {
    const parsed = parseScenarioText(bad.text);
    const found = parsed.ok ? [] : parsed.problems;
    expect(found.map(({ path }) => path).toSorted()).toEqual(
      bad.problems.map(([path]) => path).toSorted(),
    );
    for (const [path, wayOut] of bad.problems) {
      expect(found.find((problem) => problem.path === path)?.wayOut).toMatch(wayOut);
    }
  });

  it(
    'of any tank comes back as it was written',
    () => {
      fc.assert(
        fc.property(anyScenario, (scenario) => {
          expect(parseScenarioText(scenarioText(scenario))).toEqual({ ok: true, scenario });
        }),
        runsOf(500),
      );
    },
    patience,
  );

  it(
    'with any value anywhere gives a scenario or problems, and never throws',
    () => {
      const anyPlace = fc.array(fc.nat(40), { minLength: 1, maxLength: 4 });
      let refused = 0;
      fc.assert(
        fc.property(anyScenario, anyPlace, fc.anything(), (scenario, place, value) => {
          const parsed = parseScenario(spoilt(scenario, place, value));
          expectAnAnswer(parsed);
          if (!parsed.ok) refused++;
        }),
        runsOf(2000),
      );
      expect(refused).toBeGreaterThan(0);
    },
    patience,
  );

  it(
    'of any text gives problems, and never throws',
    () => {
      const anyText = fc.oneof(fc.string(), fc.json(), fc.string({ unit: 'binary' }));
      fc.assert(
        fc.property(anyText, (text) => {
          const parsed = parseScenarioText(text);
          expect(parsed.ok).toBe(false);
          expectAnAnswer(parsed);
        }),
        runsOf(5000),
      );
    },
    patience,
  );

  it(
    'cut off or damaged in one letter gives a scenario or problems',
    () => {
      fc.assert(
        fc.property(anyScenario, fc.nat(), fc.string({ maxLength: 3 }), (scenario, at, letters) => {
          const text = scenarioText(scenario);
          const place = at % text.length;
          expectAnAnswer(parseScenarioText(text.slice(0, place)));
          expectAnAnswer(parseScenarioText(text.slice(0, place) + letters + text.slice(place + 1)));
        }),
        runsOf(1000),
      );
    },
    patience,
  );
});
