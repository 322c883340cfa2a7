import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Reading } from '../../shared/log/reading';
import { straightLine } from '../../shared/log/slope';
import { toDecimals } from '../../shared/units/digits';
import { slopeSentence } from '../../src/say/fit/answer';
import { notesOf } from '../../src/say/fit/notes';
import { answerLog } from '../../workers/studies/answerLog';
import { patience, runsOf } from '../laws/size';
import { anyDosed, dosedTank, evenly, testedDaily } from './testedDaily';

const anyStray = fc.record({
  ...anyDosed,
  tests: fc.integer({ min: 8, max: 14 }),
  /** Which of the readings between, and how far it is off, dKH. */
  where: evenly(0.25, 0.8),
  byDkh: evenly(1.5, 5),
  isLow: fc.boolean(),
});

it(
  'one reading that is dKH off and stands alone is a slip of the test, no water that leapt there and back',
  () => {
    const off: { readonly own: number; readonly line: number }[] = [];
    fc.assert(
      fc.property(anyStray, ({ tests, where, byDkh, isLow, ...drawn }) => {
        const { plan, truth } = dosedTank(drawn, tests);
        const { log, values } = testedDaily(truth, tests);
        fc.pre(Math.min(...values) > 6 && Math.max(...values) < 13);
        const stray = Math.round(where * (tests - 1));
        const wild = toDecimals(values[stray]! + (isLow ? -byDkh : byDkh), 1);
        fc.pre(wild > 2);
        const read = log.map((one, i): Reading =>
          i === stray ? { ...one, alkalinityDkh: wild } : one,
        );
        const answer = answerLog(plan, read, 0.1);
        if ('why' in answer) throw new Error(answer.why);
        expect(answer.fit.leaps).toEqual([]);
        const notes = notesOf(answer.fit, plan).join(' ');
        expect(notes).toContain('One reading lies more than three standard errors off');
        // The slope that is told is that of the others.
        const rest = values.flatMap((value, day) => (day === stray ? [] : [{ day, value }]));
        const { slopeDkhPerDay } = straightLine(
          rest.map(({ day }) => day),
          rest.map(({ value }) => value),
          0.1,
        );
        const told = slopeSentence(answer);
        if (Math.abs(slopeDkhPerDay) > 0.02)
          expect(told).toContain(slopeDkhPerDay < 0 ? 'fall by' : 'rise by');
        const without = answerLog(plan, log, 0.1);
        if ('why' in without) throw new Error(without.why);
        const all = straightLine(
          read.map((_, day) => day),
          read.map(({ alkalinityDkh }) => alkalinityDkh!),
          0.1,
        );
        off.push({
          own: Math.abs(answer.useNow.dkhPerDay - without.useNow.dkhPerDay),
          line: Math.abs(all.slopeDkhPerDay - slopeDkhPerDay),
        });
      }),
      runsOf(100, 0.8),
    );
    const middle = (one: 'own' | 'line') => median(off, (tank) => tank[one])!;
    console.log(
      `use off by the stray, median ${middle('own').toFixed(3)} dKH a day, a line ${middle('line').toFixed(3)}; most ${Math.max(...off.map(({ own }) => own)).toFixed(3)}`,
    );
    expect(middle('own')).toBeLessThan(middle('line'));
  },
  patience,
);
