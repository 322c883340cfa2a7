import { expect, it } from 'vitest';
import { indexOf } from '../../shared/species/block';
import { compile } from '../../workers/engine/compile';
import { Simulation } from '../../workers/engine/simulation';
import { quietTank } from './quietTank';

it('soda ash poured onto much fine chalk falls out within a blink, and takes no more than there is', () => {
  const tank = new Simulation(
    compile(
      quietTank({
        ...{ days: 1, tank: { volumeL: 32, alkalinityDkh: 7 }, start: { clockHour: 0 } },
        precipitation: { mode: 'enabled', aboveOmega: 2, crystalM2PerG: 10, seedG: 100 },
        additions: [{ day: 1, hour: 6, additive: 'sodiumCarbonate', grams: 90 }],
      }),
    ),
  );
  const least = { Ca: Infinity, DIC: Infinity };
  tank.onStep = () => {
    for (const ion of ['Ca', 'DIC'] as const) {
      least[ion] = Math.min(least[ion], tank.books.tank[indexOf[ion]]!);
    }
  };
  tank.advanceTo(6.5);
  expect(least.Ca).toBeGreaterThan(0);
  expect(least.DIC).toBeGreaterThan(0);
  // Of 0.85 mol poured in, as much as calcium lets fall.
  const fell = tank.books.pool('precipitateCaCO3');
  expect(fell).toBeGreaterThan(0.2);
  expect(fell).toBeLessThan(0.85);
});
