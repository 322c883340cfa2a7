import { describe, expect, it } from 'vitest';
import { crossProblems } from '../../shared/scenario/crossChecks';
import type { ColumnId } from '../../shared/trace/columns';
import { readColumn } from '../../shared/trace/trace';
import { passed } from '../../shared/verdict/lineResult';
import { lastOf, ledgerBetween, usePerDay } from '../../shared/verdict/measures';
import { carriers, dwellers, tankLike } from '../../src/bench/tankLike';
import { run } from '../../workers/engine/run';
import { patience } from '../laws/size';

const all = [5, 60, 300, 20000].flatMap((volumeL) =>
  dwellers.flatMap(({ id: dweller }) =>
    carriers.map(({ id: carrier }) => ({ volumeL, dweller, carrier })),
  ),
);

describe('a tank out of three answers', () => {
  it(
    'is one that can be run, whatever the answers',
    () => {
      for (const answers of all) {
        const scenario = tankLike(answers);
        expect(crossProblems(scenario)).toEqual([]);
        const { trace, stopped, settled } = run({ ...scenario, days: 3 });
        expect([stopped, settled]).toEqual([undefined, true]);
        expect(usePerDay(trace, 0, 24)).toBeGreaterThan(
          dwellers.find(({ id }) => id === answers.dweller)!.useDkhPerDay * 0.9,
        );
      }
    },
    patience,
  );

  it(
    'stands for a month where what is dosed can hold it: inside every line, and near where it began',
    () => {
      const failed = [20, 75, 340, 2000].flatMap((volumeL) =>
        dwellers.flatMap(({ id: dweller }) =>
          (['limewater', 'pump'] as const)
            // Saturated limewater carries no more than half of what dense stony corals use.
            .filter((carrier) => !(carrier === 'limewater' && dweller === 'stony'))
            .flatMap((carrier) => {
              const { trace, lines } = run(tankLike({ volumeL, dweller, carrier }));
              const off = (id: ColumnId) => lastOf(trace, id) - readColumn(trace, id)[0]!;
              const isOff =
                Math.abs(off('alkalinity_dkh')) > 0.7 || Math.abs(off('calcium_mg_l')) > 15;
              const why = passed(lines).map(({ id }) => id);
              return isOff || why.length > 0
                ? [[volumeL, dweller, carrier, off('alkalinity_dkh'), ...why]]
                : [];
            }),
        ),
      );
      expect(failed).toEqual([]);
    },
    patience,
  );

  it(
    'may sink where nothing holds it, and never climbs out of the band',
    () => {
      for (const answers of all.filter(({ volumeL }) => volumeL !== 5)) {
        const ids = passed(run(tankLike(answers)).lines).map(({ id }) => id);
        const wrong = ids.filter((id) => /High|omega|overflow|ammonia|oxygen/.test(id));
        expect([answers, wrong]).toEqual([answers, []]);
      }
    },
    patience,
  );

  it('says the use that it was given, to the last digit', () => {
    for (const { id: dweller, useDkhPerDay } of dwellers) {
      const { question } = tankLike({ volumeL: 120, dweller, carrier: 'none' });
      const said = Number(/([\d.]+) dKH a day/.exec(question)![1]);
      expect(said).toBe(useDkhPerDay);
    }
  });

  it('has a pump that brings what is used, to a twentieth', () => {
    const scenario = tankLike({ volumeL: 300, dweller: 'mixed', carrier: 'pump' });
    const { trace } = run({ ...scenario, days: 1 });
    expect(ledgerBetween(trace, 'stock1', 0, 24)).toBeCloseTo(1, 1);
  });
});
