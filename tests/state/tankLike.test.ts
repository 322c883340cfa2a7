import { describe, expect, it } from 'vitest';
import { crossProblems } from '../../shared/scenario/crossChecks';
import { ledgerBetween, usePerDay } from '../../shared/verdict/measures';
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

  it('has a pump that brings what is used, to a twentieth', () => {
    const scenario = tankLike({ volumeL: 300, dweller: 'mixed', carrier: 'pump' });
    const { trace } = run({ ...scenario, days: 1 });
    expect(ledgerBetween(trace, 'stock1', 0, 24)).toBeCloseTo(1, 1);
  });
});
