import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { faultSentence } from '../../src/say/expression';
import { factorTable } from '../../shared/units/factorTable';

const tableOf = async (text: string, days = 2, clockHour = 0) => {
  const answer = await factorTable(text, days, clockHour);
  if (!answer.ok) throw new Error(answer.problem.fault.kind);
  return answer.table;
};
const problemOf = async (text: string) => {
  const answer = await factorTable(text, 2, 0);
  return answer.ok ? undefined : answer.problem;
};

describe('an expression of time', () => {
  it('is nothing to work out when it is plain 1', async () => {
    expect(await tableOf('1')).toBeUndefined();
  });

  it.each([
    [
      '1 + 0.2 * cos(2 * pi * day / 365)',
      (t: number) => 1 + 0.2 * Math.cos((2 * Math.PI * t) / 24 / 365),
    ],
    ['hour < 8 ? 1.5 : 0.5', (t: number) => (t % 24 < 8 ? 1.5 : 0.5)],
    [
      'max(0, sin(pi * hour / 24)) ^ 2',
      (t: number) => Math.max(0, Math.sin((Math.PI * (t % 24)) / 24)) ** 2,
    ],
    ['mod(t, 7) / 7', (t: number) => (t % 7) / 7],
    ['round(1 + t / 300, 2)', (t: number) => Math.round((1 + t / 300) * 100) / 100],
    ['log(100, 10) + log(e)', () => 3],
  ])('%s comes to what arithmetic gives at every hour', async (text, expected) => {
    const table = (await tableOf(text))!;
    expect(table.length).toBe(50);
    table.forEach((value, t) => expect(value).toBeCloseTo(expected(t), 12));
  });

  it('counts hours of the clock from where the trial starts', async () => {
    expect((await tableOf('hour / 24', 1, 6))?.[0]).toBe(0.25);
  });

  it.each([
    ['1 + ', 4],
    ['1 + banana', 4],
    ['import("fs")', 0],
    ['2 * evaluate("1")', 4],
    ['day.constructor', 0],
    ['[1, 2]', 0],
    ['f(x) = x', 0],
    ['"text"', 1],
    ['sin(1, 2)', 0],
    ['round(1, 2, 3)', 0],
    ['1 + mod(7)', 4],
    ['max()', 0],
  ])('%s is refused, with a finger at character %i', async (text, at) => {
    const problem = await problemOf(text);
    expect(problem?.at).toBe(at);
    expect(faultSentence(problem!.fault).length).toBeGreaterThan(10);
  });

  it('is refused where it leaves 0 to 100, with the moment', async () => {
    expect(faultSentence((await problemOf('1 - day'))!.fault)).toMatch(/On day 2, hour 1/);
    expect(faultSentence((await problemOf('1 / 0'))!.fault)).toMatch(/Infinity/);
  });

  /** Words a person, or somebody who means harm, may string together. */
  const words = fc.constantFrom(
    ...['day', 'hour', 't', 'pi', 'e', 'sin', 'max', 'mod', 'x', 'this', 'constructor', 'import'],
    ...['eval', '__proto__', 'process', 'unit', 'matrix', 'range', '1', '2.5', '1e9', '0', '"a"'],
    ...['+', '-', '*', '/', '^', '(', ')', ',', '?', ':', '<', '>=', '=', ';', '[', ']', '.', '!'],
  );

  it('either comes to numbers or gets a sentence: 10 000 generated ones, none hangs', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(words, { maxLength: 14 }), async (parts) => {
        const answer = await factorTable(parts.join(' '), 0.2, 0);
        if (answer.ok) expect(answer.table?.every(Number.isFinite) ?? true).toBe(true);
        else expect(faultSentence(answer.problem.fault)).toMatch(/\.$/);
      }),
      { numRuns: 10_000 },
    );
  }, 60_000);
});
