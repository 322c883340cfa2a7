import { median } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { USUAL_STOP_OMEGA } from '../../shared/processes/growthLaw';
import type { Scenario } from '../../shared/scenario/schema';
import { readColumn } from '../../shared/trace/trace';
import { run, stateAfter } from '../../workers/engine/run';
import type { TankState } from '../../workers/engine/tankState';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { standingAt } from '../../workers/studies/plan/standingAt';
import { withUse } from '../../workers/studies/plan/useEnds';
import { withReference } from '../../workers/studies/plan/withReference';
import { patience, runsOf } from '../laws/size';
import { anyTurn } from './anyTurn';

const DAYS = 14;
/** What two starts found by different ways differ by a fortnight later, dKH. */
const SAME_DKH = 0.02;

/** Where a day dips below what corals grow at, a reference that is given leaves that out. */
function restsWhereCoralsGrow(tank: Scenario): boolean {
  const { settled, stopOmega } = settle(tank, usualOptions);
  return settled && stopOmega === USUAL_STOP_OMEGA;
}

const endsAt = (tank: Scenario, from: TankState): number =>
  readColumn(run({ ...tank, days: DAYS }, usualOptions, from).trace, 'alkalinity_dkh').at(-1)!;

it(
  'a tank whose use is another goes as one that was settled with it; held to the reference of the use itself it does not',
  () => {
    const offs: { own: number; held: number }[] = [];
    fc.assert(
      fc.property(anyTurn, fc.constantFrom(-1, 1), ({ truth, giveOrTakeDkhPerDay }, side) => {
        const use = Math.max(0, truth.corals.useDkhPerDay + side * giveOrTakeDkhPerDay);
        if (![truth, withUse(truth, use)].every(restsWhereCoralsGrow)) return;
        const now = withReference(truth, usualOptions);
        const settled = endsAt(
          withUse(truth, use),
          stateAfter({ ...withUse(truth, use), days: 0 }, usualOptions),
        );
        const own = endsAt(withUse(now, use), standingAt(now, usualOptions)(use));
        const held = endsAt(withUse(now, use), stateAfter({ ...now, days: 0 }, usualOptions));
        offs.push({ own: Math.abs(own - settled), held: Math.abs(held - settled) });
      }),
      runsOf(200),
    );
    expect(offs.length).toBeGreaterThan(5);
    expect(Math.max(...offs.map(({ own }) => own))).toBeLessThan(SAME_DKH);
    expect(median(offs, ({ held }) => held)!).toBeGreaterThan(SAME_DKH);
  },
  patience,
);
