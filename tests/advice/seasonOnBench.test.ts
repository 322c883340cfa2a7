import fc from 'fast-check';
import { expect, it } from 'vitest';
import { withNewestWater } from '../../shared/log/newest';
import { usualMostPerDay } from '../../shared/recipe/mostPerDay';
import { usualTargets } from '../../shared/recipe/seasonTargets';
import { limitBands } from '../../shared/scenario/limitBands';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { metals } from '../../workers/studies/season/metals';
import { season } from '../../workers/studies/season/season';
import { UNTOLD_SHARE } from '../../workers/studies/season/seasonTank';
import { patience, runsOf } from '../laws/size';
import { anySeason } from './anySeason';

const columns = { calcium: 'calcium_mg_l', magnesium: 'magnesium_mg_l' } as const;
/** A day of corals, of gulps of the top-off and of a change of water lies between a level and its mean. */
const WITHIN_A_DAY = { calcium: 8, magnesium: 12 } as const;
/** Of the two, a metal has this far to go at the least, mg/L: so that one pour more is seen. */
const LOW = { calcium: 40, magnesium: 100 } as const;

/** Where alkalinity runs out nothing is poured before it: here it is held. */
const held = anySeason.filter(
  ({ carrier, broughtDkhPerDay, truth }) =>
    carrier === 'pair' && Math.abs(broughtDkhPerDay / truth.corals.useDkhPerDay - 1) < 0.04,
);

const anyLow = fc.record({
  any: held,
  metal: fc.constantFrom(...metals),
  hour: fc.integer({ min: 0, max: 23 }),
  minute: fc.constantFrom(0, 1, 30, 59),
});

it(
  'what the bench shows of the first mornings is what the sentence quotes, at whatever hour was tested',
  () => {
    const seen: Record<string, number> = {};
    fc.assert(
      fc.property(anyLow, ({ any, metal, hour, minute }) => {
        const { known, giveOrTakeDkhPerDay } = any;
        const targets = usualTargets(known);
        const at = `2026-03-05T${[hour, minute].map((n) => String(n).padStart(2, '0')).join(':')}`;
        const read = { calciumMgPerL: targets.calcium, magnesiumMgPerL: targets.magnesium };
        const low = { [`${metal}MgPerL`]: targets[metal] - LOW[metal] };
        const readings = [{ at, salinityPractical: 35, ...read, ...low }];
        const now = withNewestWater(known, readings);
        const { first, trial } = season({
          ...{ plan: known, now, readings, ran: [], backDays: 240, useDkhPerDay: 1 },
          ...{ giveOrTakeDkhPerDay, targets, mostPerDay: usualMostPerDay },
        });
        seen[first.kind] = (seen[first.kind] ?? 0) + 1;
        if (first.kind !== 'first') return;
        const { days, ends, poured, stretch } = first;
        const firstMornings = trial.additions.filter(({ day }) => day <= stretch.untilDay);
        expect(firstMornings).toHaveLength(days * Object.keys(poured).length);
        const { trace } = run({ ...trial, days: stretch.untilDay }, usualOptions);
        for (const one of metals.filter((id) => poured[id])) {
          const all = readColumn(trace, columns[one]);
          const most = Math.max(...all);
          expect(Math.abs(most - ends[one])).toBeLessThan(WITHIN_A_DAY[one]);
          const { high } = limitBands(known.limits).find(({ id }) => id === one)!;
          expect(most).toBeLessThan(high * (1 + UNTOLD_SHARE));
        }
      }),
      {
        ...runsOf(60),
        examples: [0, 8, 9, 10, 23]
          .map((hour) => ({
            ...fc.sample(anyLow, { numRuns: 1, seed: 1 })[0]!,
            ...{ hour, minute: 0 as const, metal: 'magnesium' as const },
          }))
          .map((one): [typeof one] => [one]),
      },
    );
    console.log(JSON.stringify(seen));
    expect(seen['first']).toBeGreaterThan(2);
  },
  patience * 2,
);
