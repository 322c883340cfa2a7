import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Scenario } from '../../shared/scenario/schema';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { patience, runsOf } from '../laws/size';
import { quietTank } from './quietTank';

type Schedule = Scenario['dosers'][number]['schedule'];

/** What comes out of a bottle in so many days, mL, read off the calcium that it brings. */
function givenMl(schedule: Partial<Schedule>, mlPerDay: number, days: number): number {
  const gramsPerL = 50;
  const scenario = quietTank({
    days,
    tank: { volumeL: 1000 },
    dosers: [
      {
        ...{ name: 'calcium', mlPerDay, stockL: 500, schedule },
        recipe: [{ additive: 'calciumChlorideDihydrate', gramsPerL }],
      },
    ],
  });
  const { trace } = run(scenario);
  const [mgPerL, litres] = [readColumn(trace, 'calcium_mg_l'), readColumn(trace, 'volume_l')];
  const gainedMg = mgPerL.at(-1)! * litres.at(-1)! - mgPerL[0]! * litres[0]!;
  // 272.6 mg of calcium in each gram of the dihydrate, by atomic weights.
  return (1000 * gainedMg) / (272.6 * gramsPerL);
}

describe('a dosing pump', () => {
  it(
    'gives the day’s dose as set, however many doses were typed, or what its hours allow',
    () => {
      fc.assert(
        fc.property(
          fc.double({ min: 1, max: 12, noNaN: true }),
          fc.double({ min: 0.25, max: 24, noNaN: true }),
          fc.double({ min: 1, max: 60, noNaN: true }),
          fc.double({ min: 10, max: 2000, noNaN: true }),
          (doses, hours, pumpMlPerMin, mlPerDay) => {
            const schedule = { way: 'doses' as const, doses, hours, pumpMlPerMin };
            const most = Math.min(mlPerDay, hours * 60 * pumpMlPerMin);
            expect(givenMl(schedule, mlPerDay, 2) / 2 / most).toBeCloseTo(1, 2);
          },
        ),
        runsOf(200),
      );
    },
    patience,
  );

  it.each([1.5, 2.5])('asked for %d doses a day gives no more than the day’s dose', (doses) => {
    expect(givenMl({ way: 'doses', doses, hours: 12 }, 100, 4)).toBeCloseTo(400, 0);
  });
});
