import { describe, expect, it } from 'vitest';
import { drillSentences } from '../../../src/say/drill/drillSentences';
import { stopsAir } from '../../../shared/verdict/oxygenLeft';
import { timelineOf } from '../../../src/say/drill/timeline';
import { usualOptions } from '../../../workers/engine/simulation';
import { runDrill } from '../../../workers/studies/drill/drillRun';
import { rehearse } from '../../../workers/studies/drill/rehearse';
import { withoutChalk } from '../../../shared/scenario/chalk';
import { drillFiles, scenarioFromFile } from '../scenarioFiles';
import { drillAnswers } from './drillAnswers';

describe.each(drillFiles)('%s', (name) => {
  const scenario = scenarioFromFile(name);
  const outcome = runDrill(withoutChalk(scenario));

  it('has a title, a question and an answer, and runs to its end with finite numbers', () => {
    expect(scenario.question).toMatch(/\?$/);
    expect(scenario.answer).toMatch(/^[A-Za-z].{20,}\.$/);
    expect(outcome.trace.rows).toBe(scenario.days * 24 + 1);
    expect(new Float64Array(outcome.trace.buffer).every(Number.isFinite)).toBe(true);
    expect(outcome.settled).toBe(true);
    expect(outcome.closures.alkalinityUmolPerKg).toBeLessThan(1e-3);
  });

  it('is inside its limits before anything breaks', () => {
    expect(outcome.lines.filter(({ already }) => already)).toEqual([]);
  });

  it('has an answer that states what the engine gives, and no other number', () => {
    const stated = drillAnswers[name]!(outcome);
    for (const text of stated) expect(scenario.answer).toContain(text);
    const { limits } = scenario;
    const known = [
      ...[limits.phHighNbs, limits.phHarmNbs, limits.phLowNbs, limits.alkalinityLowDkh],
      ...[limits.alkalinityHighDkh, limits.salinityHighPractical, limits.salinityLowPractical],
      ...[limits.oxygenLowMgPerL, limits.oxygenHarmMgPerL],
    ].map(String);
    const rest = [...stated, ...known]
      .sort((a, b) => b.length - a.length)
      .reduce((text, part) => text.replaceAll(part, ''), scenario.answer);
    expect(rest).not.toMatch(/\d/);
  });

  it('is told in order of time, in words, with a headline', async () => {
    const answer = (await rehearse(scenario, usualOptions, async () => true))!;
    const moments = timelineOf(scenario, answer);
    const times = moments.map(({ timeH }) => timeH);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
    expect(moments.length).toBeLessThan(18);
    const told = drillSentences(answer, scenario);
    expect(told[stopsAir(scenario) ? 1 : 0]).toMatch(/pH (would peak|peaks) at [\d>]/);
    expect(told.join(' ')).not.toMatch(/NaN|undefined|null/);
    expect(JSON.stringify(moments)).not.toMatch(/NaN|undefined|null/);
  });
});
