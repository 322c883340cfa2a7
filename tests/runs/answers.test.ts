import { describe, expect, it } from 'vitest';
import { readColumn } from '../../shared/trace/trace';
import { tellVerdict } from '../../src/say/verdict/verdict';
import { run } from '../../workers/engine/run';
import { answers } from './answers';
import { scenarioFiles, scenarioFromFile } from './scenarioFiles';

const numbersIn = (text: string) => (text.match(/\d+(\.\d+)?/g) ?? []).map(Number);

describe.each(scenarioFiles)('%s', (name) => {
  const scenario = scenarioFromFile(name);
  const trial = run(scenario);
  const verdict = tellVerdict(scenario, trial);
  const answer = answers[name];

  it('has a title, a question and an answer, and the answer is known here', () => {
    expect(scenario.title.length).toBeGreaterThan(5);
    expect(scenario.question).toMatch(/\?$/);
    expect(scenario.answer).toMatch(/^[A-Z].{20,}\.$/);
    expect(answer).toBeDefined();
  });

  it('runs to its end with finite numbers', () => {
    expect(trial.trace.rows).toBe(scenario.days * 24 + 1);
    expect(new Float64Array(trial.trace.buffer).every(Number.isFinite)).toBe(true);
    expect(trial.settled).toBe(true);
  });

  it('has a verdict that agrees with its answer on whether the plan holds', () => {
    const low = scenario.limits.alkalinityLowDkh;
    const held = readColumn(trial.trace, 'alkalinity_dkh').every((dkh) => dkh >= low);
    expect(verdict.insideLimits).toBe(answer?.holds);
    if (!answer?.headline) expect(held).toBe(answer?.holds);
    expect(trial.crossings.length === 0).toBe(answer?.holds);
    expect(verdict.headline).toMatch(answer?.headline ?? (held ? /^holds / : /^falls below /));
  });

  it('has an answer that states the numbers the engine gives, and no other', () => {
    const stated = numbersIn(scenario.answer);
    const wanted = answer?.numbers({ scenario, trial, verdict }) ?? [];
    const found = wanted.map(([what, value, digits]) => [what, Number(value.toFixed(digits))]);
    for (const [what, value] of found) expect(stated, `${what}: ${value}`).toContain(value);
    const usual = [scenario.corals.useDkhPerDay, scenario.days];
    const known = [...found.map(([, value]) => value), ...usual];
    expect(stated.filter((number) => !known.includes(number))).toEqual([]);
  });
});
