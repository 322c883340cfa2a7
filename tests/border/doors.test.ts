import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { parseScenario, scenarioOf } from 'paper-reef/shared/scenario';
import { readColumn, readLedger } from 'paper-reef/shared/trace';
import { run, runDrill, settle, usualOptions } from 'paper-reef/workers/engine';
import {
  answerLog,
  correctBefore,
  firstChange,
  offers,
  planQuestion,
  sampledOptions,
} from 'paper-reef/workers/studies';
import { describe, expect, it, vi } from 'vitest';
import * as asked from '../../workers/desk/logQuestions';

describe('the doors that others build on', () => {
  it('are what package.json says: every one a file, with its types', () => {
    const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as {
      exports: Record<string, { types: string; default: string }>;
    };
    expect(Object.keys(exports)).toHaveLength(5);
    for (const [door, { types, default: file }] of Object.entries(exports)) {
      expect([types, file]).toEqual([`${door}/index.ts`, `${door}/index.ts`]);
      expect(readFileSync(file, 'utf8')).toMatch(/^export /m);
    }
  });

  it('open in plain Node and leave nothing in the realm', () => {
    const watch =
      'const before = Object.getOwnPropertyNames(globalThis).length;' +
      "const { scenarioOf } = await import('paper-reef/shared/scenario');" +
      "const { run } = await import('paper-reef/workers/engine');" +
      "const doors = ['shared/seawater', 'shared/trace', 'workers/studies'];" +
      "await Promise.all(doors.map((door) => import('paper-reef/' + door)));" +
      'console.log(Object.getOwnPropertyNames(globalThis).length - before, typeof document);' +
      'console.log(run(scenarioOf({ days: 1 })).trace.rows);';
    const args = ['--import', 'tsx', '--input-type=module', '--eval', watch];
    const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
    expect({ status, stdout, stderr }).toEqual({
      ...{ status: 0, stderr: '' },
      stdout: '0 undefined\n25\n',
    });
  });

  it('answer the example for developers as it is printed', async () => {
    const example = readFileSync('tests/border/doorsExample.ts', 'utf8');
    expect(readFileSync('DEVELOPERS.md', 'utf8')).toContain(`\`\`\`ts\n${example}\`\`\``);
    const printed = vi.spyOn(console, 'log').mockImplementation(() => undefined);
    await import('./doorsExample');
    const lines = printed.mock.calls.map((words) => words.join(' '));
    printed.mockRestore();
    expect(lines).toHaveLength(8);
    expect(lines.join('\n')).toMatch(/^use, dKH a day: 0\.\d\d ± 0\.\d\d$/m);
    expect(lines.join('\n')).not.toMatch(/NaN|undefined/);
  });

  it('give a whole scenario from a part of one, and refuse what no tank is', () => {
    const usual = scenarioOf({});
    expect(parseScenario(usual)).toEqual({ ok: true, scenario: usual });
    expect(usual.tank).toMatchObject({ volumeL: 300, alkalinityDkh: 8.5 });
    expect(scenarioOf({ tank: { volumeL: 75 } }).tank).toEqual({ ...usual.tank, volumeL: 75 });
    const spoilt = { ...usual, days: 0, tank: { ...usual.tank, volumeL: -1 } };
    const parsed = parseScenario(spoilt);
    expect(!parsed.ok && parsed.problems.map(({ path }) => path)).toEqual(['days', 'tank.volumeL']);
    expect(() => scenarioOf({ days: 0, tank: { volumeL: -1 } })).toThrow(/days.*\n.*tank\.volumeL/);
    expect(() => scenarioOf({ tank: 300 })).toThrow(/tank/);
  });

  it('run a tank whose end is the sum of its ledger', () => {
    const plan = scenarioOf({ days: 3 });
    const { trace, settled } = run(plan, usualOptions);
    const dkh = readColumn(trace, 'alkalinity_dkh');
    const moved = trace.ledger.reduce((sum, { id }) => sum + readLedger(trace, id).at(-1)!, 0);
    // The ledger is of the start volume, dKH of the volume that is: they part with evaporation.
    expect(dkh.at(-1)! - dkh[0]!).toBeCloseTo(moved, 1);
    expect([settled, settle(plan, usualOptions).settled]).toEqual([true, true]);
    const stuck = { kind: 'topOffOn', day: 1, hour: 2, endsAfterH: 1 };
    const { switchings } = runDrill(scenarioOf({ days: 1, faults: [stuck] }));
    const begins = { timeH: 2, pipe: 'topOff', role: 'topOff', opens: true, dry: false };
    expect(switchings).toContainEqual(begins);
  });
});

describe('a log answered through the doors alone', () => {
  const plan = scenarioOf({});
  const readings = [8.4, 8.1, 8.2, 7.8, 7.7, 7.5].map((alkalinityDkh, i) => ({
    at: `2026-03-0${i + 1}T10:30`,
    alkalinityDkh,
  }));
  const answer = answerLog(plan, readings, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  const question = planQuestion(plan, readings, answer, { targetDkh: 8.5 });
  const found = offers(question);
  const correction = correctBefore(question, found[0]!.scenario);

  it('says of an untouched plan and six readings what the page says', async () => {
    const log = readings;
    expect(await asked.answer({ plan, log, withinDkhPerDay: 0.1 })).toMatchObject(answer);
    const plans = await asked.plans({ plan, log, known: answer, wanted: { targetDkh: 8.5 } });
    expect(plans).toMatchObject({ question, offers: found });
    const { scenario } = found[0]!;
    const first = { question, plan: scenario, additive: 'sodiumBicarbonate' } as const;
    expect(await asked.correct(first)).toMatchObject(correction);
  });

  it('says what the readings say: a fall of 0.18 dKH a day, by hand', () => {
    // Σ(t − t̄)(y − ȳ) / Σ(t − t̄)² of the six, t in days: −3.15 / 17.5.
    const { dkhPerDay, standardErrorDkhPerDay } = answer.useNow;
    expect(Math.abs(dkhPerDay - 0.18)).toBeLessThan(0.03);
    // 0.15 dKH of a test over √17.5 days.
    expect(standardErrorDkhPerDay).toBeGreaterThan(0.15 / Math.sqrt(17.5) / 2);
    expect(answer.fan.ahead.dkh.length).toBeGreaterThan(24);
    expect(answer.nextTest.inDays).toBeGreaterThan(0);
  });

  it('takes plans and correction from the same answer', () => {
    expect(question.now).toBe(answer.now);
    expect(question.giveOrTakeDkhPerDay).toBe(2 * answer.useNow.standardErrorDkhPerDay);
    expect(found).toHaveLength(3);
    expect(correction.kind).toBe('raise');
    if (correction.kind !== 'raise') return;
    expect(correction.scenario.tank.alkalinityDkh).toBe(answer.now.tank.alkalinityDkh);
    expect(firstChange(answer.now).verdict.insideLimits).toBe(false);
  });

  it('goes on from the newest water and a fifth of the typed use where there is no answer', () => {
    const one = readings.slice(-1);
    const told = answerLog(plan, one, 0.1);
    expect(told).toEqual({ why: 'one' });
    const { now, giveOrTakeDkhPerDay } = planQuestion(plan, one, told, { targetDkh: 8.5 });
    expect(now.tank.alkalinityDkh).toBe(7.5);
    expect(giveOrTakeDkhPerDay).toBeCloseTo(0.2 * plan.corals.useDkhPerDay, 12);
  });

  it('will not run an expression of time that nobody has sampled', async () => {
    const windy = scenarioOf({ room: { co2Factor: '1 + 0.2*sin(t)' } });
    expect(() => run(windy)).toThrow(/sampleFactors/);
    expect(await sampledOptions(plan)).toEqual({ ...usualOptions, factors: {} });
  });
});
