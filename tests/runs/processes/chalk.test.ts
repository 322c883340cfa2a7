import { describe, expect, it } from 'vitest';
import { withChalk } from '../../../shared/scenario/chalk';
import { compile } from '../../../workers/engine/compile';
import { settle } from '../../../workers/engine/settle';
import { Simulation, usualOptions } from '../../../workers/engine/simulation';
import { scenarioFromFile } from '../scenarioFiles';
import { patience } from '../../laws/size';
import { misses } from '../../reference/check';
import { limedTank, runawayChecks, type Chalk } from './checks/runaway';

const START_DKH = 8;

function dkhAfter(days: number, chalk: Chalk, toDkh?: number): number {
  const tank = limedTank(chalk, toDkh);
  tank.advanceTo(days * 24);
  return tank.view.alkalinityDkh;
}

describe('chalk that falls out by itself', () => {
  it(
    'takes more than 3 % of limewater brought, until it stops near Ω 5',
    () => {
      expect(runawayChecks()).toHaveLength(2);
      expect(misses(runawayChecks())).toEqual([]);
      expect(dkhAfter(5, { mode: 'enabled' })).toBeLessThan(START_DKH);
    },
    patience,
  );

  it('stays away when it is switched off, however much lime there is', () => {
    const tank = limedTank({ mode: 'off' });
    tank.advanceTo(48);
    expect(tank.books.pool('precipitateCaCO3')).toBe(0);
    expect(tank.view.alkalinityDkh).toBeCloseTo(11.42, 2);
  });

  it('is never less than none where it begins in the midst of a step', () => {
    for (const name of ['drill-stuck-pump', 'drill-empty-reservoir', 'drill-strong-mix']) {
      const plan = withChalk(scenarioFromFile(`${name}.json`));
      const tank = new Simulation(compile(plan, settle(plan, usualOptions)), usualOptions);
      let leastMol = 0;
      tank.onStep = () => {
        leastMol = Math.min(leastMol, tank.books.pool('precipitateCaCO3'));
      };
      tank.advanceTo(24 * plan.days);
      expect(leastMol, name).toBe(0);
    }
  });

  it('is left alone by the guard up to Ω 10, and stops there when it comes from above', () => {
    expect(dkhAfter(5, { mode: 'guarded' }, 9)).toBeCloseTo(9, 2);
    const tank = limedTank({ mode: 'guarded' });
    tank.advanceTo(120);
    expect(tank.view.omegaAragonite).toBeGreaterThan(10);
    expect(tank.view.omegaAragonite).toBeLessThan(10.1);
  });

  it('falls faster the more crystals there are to grow on', () => {
    const bare = dkhAfter(0.125, { mode: 'enabled' });
    expect(dkhAfter(0.125, { mode: 'enabled', seedG: 20 })).toBeLessThan(bare - 0.5);
    expect(dkhAfter(0.125, { mode: 'enabled', crystalM2PerG: 0 })).toBeGreaterThan(bare + 0.5);
  });

  it(
    'needs something solid to begin on',
    () => {
      const bare = { mode: 'enabled', wettedM2Per100L: 0, seedG: 0 } as const;
      expect(dkhAfter(5, bare)).toBeCloseTo(11.42, 2);
      const rows = limedTank(bare).plan.ledger.map(({ id }) => id);
      expect(rows).not.toContain('precipitation');
    },
    patience,
  );

  it('runs away alike at a hundredth of the tolerance, since each look sees the chalk so far', () => {
    const fine = limedTank({ mode: 'enabled' }, 11.42, { toleranceUmolPerKg: 2e-4 });
    const usual = limedTank({ mode: 'enabled' });
    for (const hour of [2, 3, 4, 5, 7]) {
      fine.advanceTo(hour);
      usual.advanceTo(hour);
      expect(Math.abs(fine.view.alkalinityDkh - usual.view.alkalinityDkh)).toBeLessThan(0.0005);
    }
  });
});
