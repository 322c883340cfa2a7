import { describe, expect, it } from 'vitest';
import { nitrification } from '../../../shared/processes/nitrification';
import { emptyBlock, indexOf } from '../../../shared/species/block';
import { patience } from '../../laws/size';
import { misses } from '../../reference/check';
import { nitrogenChecks } from './checks/nitrogen';
import { organicSaltChecks } from './checks/organicSalts';
import { usualOptions } from '../../../workers/engine/simulation';
import { ammoniumAtStart, changeOver, mol, onlyTank } from './onlyTank';
import { onlyView } from './onlyView';

describe('bacteria', () => {
  it(
    'cost 0.045 dKH for each mg/L of nitrate from food, twice that from ammonium, and give it back',
    () => {
      expect(nitrogenChecks()).toHaveLength(3);
      expect(misses(nitrogenChecks())).toEqual([]);
    },
    patience,
  );

  it(
    'make one equivalent of each mole of acetate or formate, which brings none as it dissolves',
    () => {
      expect(organicSaltChecks()).toHaveLength(4);
      expect(misses(organicSaltChecks())).toEqual([]);
    },
    patience,
  );

  it('take a share of the ammonia in an hour as the filter is set, and none of it when not', () => {
    const left = (nitrificationPerH: number) => {
      const tank = onlyTank({ filter: { nitrificationPerH } }, usualOptions, [ammoniumAtStart(1)]);
      const start = mol(tank, 'TAN');
      return 1 + changeOver(tank, 2, { tan: (t) => mol(t, 'TAN') }).tan / start;
    };
    expect(left(0.5)).toBeCloseTo(Math.exp(-1), 3);
    expect(left(0)).toBe(1);
  });

  it('leave a typed ammonia reading standing, and take only what comes on top of it', () => {
    const tank = (pouredMgPerL: number) =>
      onlyTank({ tank: { ammoniaMgPerL: 0.5 }, filter: { nitrificationPerH: 0.5 } }, usualOptions, [
        ammoniumAtStart(pouredMgPerL),
      ]);
    const left = (poured: number) => {
      const t = tank(poured);
      const start = mol(t, 'TAN');
      t.advanceTo(48);
      return mol(t, 'TAN') / start;
    };
    expect(left(0)).toBeCloseTo(1, 6);
    expect(left(0.5)).toBeCloseTo(0.5, 3);
  });

  it('slow down below pH 7 and stop at 6', () => {
    const amounts = emptyBlock();
    amounts[indexOf.TAN] = 1;
    const rate = (phTotal: number) =>
      nitrification.rate(onlyView({ phTotal, amounts }), { perH: 0.5, standingMolPerL: 0 });
    expect([8, 7, 6.5, 6, 5].map(rate)).toEqual([0.5, 0.5, 0.25, 0, 0]);
  });
});
