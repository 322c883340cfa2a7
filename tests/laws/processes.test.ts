import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { processes } from '../../shared/processes/registry';
import { references } from '../../shared/references';
import { indexOf, WATER } from '../../shared/species/block';
import { imbalance, termsOf } from '../../shared/species/reaction';
import { dissolved } from '../../shared/species/species';
import { compile, type Plan } from '../../workers/engine/compile';
import { scaleOverdraw } from '../../workers/engine/overdraw';
import { TankView } from '../../workers/engine/tankView';
import { anyScenario } from './anyScenario';
import { patience, runsOf } from './size';

/** The tank of a plan at an hour of daylight, with one species at nothing. */
function viewWithout(plan: Plan, species: number | undefined): TankView {
  const amounts = Float64Array.from(plan.books.tank);
  if (species !== undefined) amounts[species] = 0;
  const view = new TankView();
  view.setLight(1, 0);
  const tempC = plan.weather.tempC(12);
  view.read(amounts, 12, tempC, plan.weather.pco2AirUatm(12, tempC));
  return view;
}

const settingsIn = (plan: Plan, id: string) => plan.channels.find((channel) => channel.id === id);

describe.each(processes.map((kind) => [kind.id, kind] as const))('the process %s', (id, kind) => {
  /** Tries a law in every tank that has the process. */
  const inAnyTank = (law: (plan: Plan, channel: Plan['channels'][number]) => void) => {
    let tanks = 0;
    fc.assert(
      fc.property(anyScenario, (scenario) => {
        const plan = compile(scenario);
        const channel = settingsIn(plan, id);
        if (channel) law(plan, channel);
        if (channel) tanks++;
      }),
      runsOf(1000),
    );
    expect(tanks).toBeGreaterThan(0);
  };

  it('cites what is in the list of references, and has a label', () => {
    expect(kind.cites.every((key) => key in references)).toBe(true);
    expect(kind.cites.length).toBeGreaterThan(0);
    expect(kind.label).not.toBe('');
  });

  it(
    'balances every element, whatever its settings',
    () => {
      inAnyTank((_, { process: { reaction } }) => {
        expect(imbalance(reaction)).toEqual({});
        expect(termsOf(reaction).length).toBeGreaterThan(1);
      });
    },
    patience,
  );

  it(
    'goes at a finite rate, and takes nothing of a species of which there is nothing',
    () => {
      inAnyTank((plan, { process, tankTerms }) => {
        const rate = (view: TankView) => process.rate(view, process.settings);
        expect(rate(viewWithout(plan, undefined))).toSatisfy(Number.isFinite);
        for (const { index, moles } of tankTerms) {
          const made = moles * rate(viewWithout(plan, index));
          expect(made).toBeGreaterThanOrEqual(0);
        }
      });
    },
    patience,
  );

  it(
    'draws no species below nothing once the guard has scaled it',
    () => {
      inAnyTank((plan, { tankTerms }) => {
        const c = plan.channels.findIndex((channel) => channel.id === id);
        const extents = new Float64Array(plan.channels.length);
        const largest = Math.max(...plan.books.tank.subarray(0, indexOf.untrackedCharge));
        for (const sign of [1, -1]) {
          extents.fill(0);
          extents[c] = sign * 2 * largest;
          scaleOverdraw(plan.channels, extents, plan.books.tank, new Float64Array(WATER + 1));
          for (const { index, moles } of tankTerms) {
            const left = plan.books.tank[index]! + moles * extents[c]!;
            expect(left).toBeGreaterThanOrEqual(-1e-15 * largest);
          }
        }
      });
    },
    patience,
  );
});

it('names only species and pools that exist, so that alkalinity follows from the ions', () => {
  expect(Object.keys(dissolved)).not.toContain('alkalinity');
});
