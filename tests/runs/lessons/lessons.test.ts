import { describe, expect, it } from 'vitest';
import { valueAt } from '../../../shared/scenario/change';
import { quantityAt } from '../../../shared/scenario/fields';
import { HIGHEST_PH_NBS } from '../../../shared/trace/columns';
import { keysIn, statedAt } from '../../../src/lessons/fill';
import type { Lesson, RunName } from '../../../src/lessons/lesson';
import { lessonList } from '../../../src/lessons/lessonList';
import { measures, type MeasureId } from '../../../src/lessons/measures';
import { plansOf } from '../../../src/lessons/runsOf';
import { run } from '../../../workers/engine/run';
import { betweenRows, fromCsv } from './fromCsv';
import { runsAt } from './runsAt';

const textsOf = (lesson: Lesson): string[] => [
  lesson.title,
  lesson.about,
  lesson.setting,
  lesson.predict.question,
  ...lesson.predict.choices.map(({ text }) => text),
  lesson.reveal,
  lesson.control.invite,
  lesson.control.now,
  lesson.ask.question,
  lesson.ask.answer,
  ...lesson.why,
  lesson.equation.inWords,
  lesson.assumes,
];

/** Counts in a reaction equation are the only digits that a lesson writes itself. */
const COUNTS_IN_EQUATIONS = ['2'];

it('has at least eight lessons, each with an address of its own', () => {
  expect(lessonList.length).toBeGreaterThanOrEqual(8);
  expect(new Set(lessonList.map(({ id }) => id)).size).toBe(lessonList.length);
});

describe.each(lessonList)('$id', (lesson) => {
  // Away from where the control starts, so that "now" and "begin" cannot be taken for each other.
  const [low, high] = lesson.control.range;
  const start = valueAt(lesson.scenario, lesson.control.path) as number;
  const { step } = quantityAt(lesson.control.path).quantity;
  const moved = Number((Math.round((low + high + start) / 3 / step) * step).toFixed(4));
  const runs = runsAt(lesson, moved);
  const keys = [...new Set(textsOf(lesson).flatMap(keysIn))];

  it('writes no number that the engine could give', () => {
    const own = textsOf(lesson).map((text) => text.replaceAll(/\{[^}]+\}/g, ''));
    expect(own.filter((text) => /\d/.test(text))).toEqual([]);
    const counts = lesson.equation.text.match(/\d+/g) ?? [];
    expect(counts.filter((count) => !COUNTS_IN_EQUATIONS.includes(count))).toEqual([]);
  });

  it('states at least four numbers, each as the exported file of its run gives it', () => {
    expect(keys.length).toBeGreaterThanOrEqual(4);
    for (const key of keys) {
      const [runName, ...rest] = key.split('.') as [RunName, ...string[]];
      const trial = runs[runName];
      const { text } = statedAt(key, runs);
      const again = fromCsv[rest[0] as MeasureId];
      if (rest[0]! in measures) {
        if (!again) continue;
        const { digits } = measures[rest[0] as MeasureId];
        const value = again(trial);
        const shown = Number(text.replace(/^[^\d.−-]*/, '').split(' ')[0]);
        if (rest[0]!.startsWith('ph') && value > HIGHEST_PH_NBS) expect(text).toBe('>9.5');
        else {
          const rounding = 0.5001 * 10 ** -digits;
          const unseen = betweenRows[rest[0] as MeasureId]?.(trial) ?? 0;
          expect(Math.abs(shown - value), key).toBeLessThanOrEqual(rounding + unseen);
        }
      } else {
        const json = JSON.parse(JSON.stringify(trial.scenario)) as Record<string, never>;
        const field = rest.reduce<unknown>((tree, step) => (tree as never)[step], json);
        expect(Number(text.split(' ')[0]), key).toBe(field);
      }
    }
  });

  it('argues for the prediction that the engine makes true', () => {
    expect(lesson.predict.choices.map(({ id }) => id)).toContain(lesson.predict.right);
    expect(lesson.predict.judge(runs)).toBe(lesson.predict.right);
  });

  it('runs to its end wherever the control stands', () => {
    for (const value of [low, moved, high]) {
      const plan = plansOf(lesson, value).now;
      const { trace } = run(plan);
      expect(trace.rows).toBe(Math.floor(plan.days * 24 + 1e-9) + 1);
      expect(new Float64Array(trace.buffer).every(Number.isFinite)).toBe(true);
    }
  });
});
