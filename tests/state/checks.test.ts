import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { oldestFirst, type Check } from '../../shared/log/check';
import { readTankLog } from '../../shared/log/readTankLog';
import { emptyLog } from '../../shared/log/tankLog';
import { everythingText, readEverything } from '../../src/store/everything';
import { example } from '../../src/store/example';
import { mergeLogs } from '../../src/store/mergeLogs';
import { examplePlans } from '../../src/store/plans';
import { readTank } from '../../src/store/readTank';
import { newTank } from '../../src/store/tanks';

const limit = { what: 'Run-time limit', testedAt: '2026-11-14T10:00' };
const air = { what: 'Battery air pump', testedAt: '' };
const old = { what: 'Second switch', testedAt: '2025-02-01T09:00' };
const logOf = (...checks: Check[]) => ({ ...emptyLog, checks });

const anyChecks = fc
  .array(
    fc.record({
      what: fc.constantFrom('air', 'limit', 'switch', 'heater'),
      testedAt: fc.constantFrom('', '2025-01-01T08:00', '2026-01-01T08:00', '2026-05-01T08:00'),
    }),
  )
  .map(oldestFirst);

describe('what was tested', () => {
  it('comes oldest first, what was never tested before it, one of each', () => {
    expect(oldestFirst([limit, old, air, { ...limit, testedAt: '' }])).toEqual([air, old, limit]);
  });

  it('stays with the tank through a save and a backup, the example that nobody has touched too', () => {
    const tank = {
      ...newTank('tank-1', example.title, examplePlans(example)),
      log: logOf(air, limit),
    };
    const read = readTank(JSON.parse(JSON.stringify(tank)));
    expect(read.problems).toEqual([]);
    expect(read.tank?.log.checks).toEqual([air, limit]);
    const back = readEverything(everythingText({ tanks: [tank], preferences: {} }));
    expect(back.ok && back.everything.tanks[0]!.log.checks).toEqual([air, limit]);
  });

  it('of a log that has none is empty, and a bad line takes no other along', () => {
    expect(readTankLog({ readings: [] })).toEqual({ log: emptyLog, problems: [] });
    const bad = { what: 'Heater', testedAt: 'last week' };
    const { log, problems } = readTankLog({ readings: [], checks: [limit, bad, { what: ' ' }] });
    expect(log.checks).toEqual([limit]);
    expect(problems.map(({ path }) => path)).toEqual(['checks[1].testedAt', 'checks[2].what']);
  });

  it('in two windows is what both have tested, the newer of each; what one took off is off', () => {
    const newer = { ...limit, testedAt: '2026-12-01T10:00' };
    const merged = mergeLogs(logOf(air, old, limit), logOf(old, newer), logOf(air, old, limit));
    expect(merged.checks).toEqual([old, newer]);
    fc.assert(
      fc.property(anyChecks, anyChecks, anyChecks, (base, mine, theirs) => {
        const [a, b] = [
          mergeLogs(logOf(...base), logOf(...mine), logOf(...theirs)),
          mergeLogs(logOf(...base), logOf(...theirs), logOf(...mine)),
        ];
        expect(a.checks).toEqual(b.checks);
        const known = (one: Check) => base.some((other) => other.what === one.what);
        for (const one of [...mine, ...theirs].filter((check) => !known(check))) {
          expect(a.checks.map(({ what }) => what)).toContain(one.what);
        }
      }),
    );
  });
});
