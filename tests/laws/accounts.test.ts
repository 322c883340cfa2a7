import fc from 'fast-check';
import { expect, it } from 'vitest';
import { alkalinityEq, BLOCK_SIZE } from '../../shared/species/block';
import { meqPerLPerDkh } from '../../shared/seawater/alkalinity';
import { readLedger } from '../../shared/trace/trace';
import { ended, stateAfter } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { anyScenario } from './anyScenario';
import { patience, runsOf } from './size';

/** Of what has gone in and out, which may be many times what is there. */
const ROUNDING = 1e-12;

it(
  'what each row brought adds up to all that the tank gained of everything, and its alkalinity to the ledger',
  () => {
    let tried = 0;
    fc.assert(
      fc.property(anyScenario, (scenario) => {
        const before = stateAfter({ ...scenario, days: 0 }, usualOptions);
        const trial = ended(scenario, usualOptions, before);
        const { accounts, trace, stopped } = trial.result();
        if (stopped) return;
        tried++;
        const [from, to] = [before, trial.state()].map(({ vessels }) => vessels[0]!.amounts);
        for (let i = 0; i < BLOCK_SIZE; i++) {
          const sum = accounts.reduce((all, { brought }) => all + brought[i]!, 0);
          const size = accounts.reduce(
            (all, { brought }) => all + Math.abs(brought[i]!),
            from![i]!,
          );
          expect(Math.abs(sum - (to![i]! - from![i]!))).toBeLessThanOrEqual(
            1e-18 + ROUNDING * 1e3 * Math.abs(size),
          );
        }
        for (const { row, brought } of accounts) {
          const ledger = readLedger(trace, row.id);
          const dkh = (alkalinityEq(brought) * 1000) / meqPerLPerDkh / scenario.tank.volumeL;
          expect(dkh).toBeCloseTo(ledger.at(-1)! - ledger[0]!, 6);
        }
      }),
      runsOf(150),
    );
    expect(tried).toBeGreaterThan(0);
  },
  patience,
);
