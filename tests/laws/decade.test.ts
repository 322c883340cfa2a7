import { expect, it } from 'vitest';
import { run, stateAfter, type TankState } from '../../workers/engine/index';
import { usualOptions } from '../../workers/engine/simulation';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { isFull, patience } from './size';

const YEARS = 10;

const sizeOf = ({ vessels, pools, ledger, recent }: TankState): number =>
  [...vessels.map(({ amounts }) => amounts), pools.amounts].reduce(
    (n, { length }) => n + length,
    0,
  ) + [recent.ph, recent.dkh].reduce((n, { values }) => n + values.length, ledger.length);

// Ten years take half a minute: the proof alone runs them.
it.runIf(isFull).each(['limewater-holds', 'water-changes-high-salt', 'calcium-reactor-raceway'])(
  '%s keeps its books for a decade, and what it goes on from grows no larger',
  (name) => {
    const plan = scenarioFromFile(`${name}.json`);
    let state: TankState | undefined;
    const sizes: number[] = [];
    for (let year = 1; year <= YEARS; year++) {
      state = stateAfter({ ...plan, days: 365 * year }, usualOptions, state);
      sizes.push(sizeOf(state));
    }
    const { closures, trace } = run({ ...plan, days: 365 * YEARS + 1 }, usualOptions, state);
    expect(trace.rows).toBe(25);
    expect(closures.alkalinityUmolPerKg).toBeLessThan(1e-3);
    for (const off of Object.values(closures.elements)) expect(off).toBeLessThan(1e-12);
    // The last day is kept step by step, and steps differ from year to year: a few more or less.
    const [before, after] = [sizes.slice(0, YEARS / 2), sizes.slice(YEARS / 2)];
    expect(Math.max(...after)).toBeLessThan(1.2 * Math.max(...before));
  },
  patience,
);
