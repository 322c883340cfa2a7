import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ProcessKind } from '../../shared/processes/process';
import { processes } from '../../shared/processes/registry';
import { references } from '../../shared/references';
import { indexOf, WATER } from '../../shared/species/block';
import { imbalance, termsOf } from '../../shared/species/reaction';
import { scenarioOf } from '../../shared/scenario/write';
import { dissolved, dissolvedIds } from '../../shared/species/species';
import { compile, type Plan } from '../../workers/engine/compile';
import { scaleOverdraw } from '../../workers/engine/overdraw';
import { TankView } from '../../workers/engine/tankView';
import { anyScenario } from './anyScenario';
import { patience, runsOf } from './size';
import { stepIn } from './stepIn';

/** The tank of a plan at an hour of daylight, with so many times as much of one species. */
function viewWith(plan: Plan, times: number, species?: number, warmerC = 0): TankView {
  const amounts = Float64Array.from(plan.books.tank);
  if (species !== undefined) amounts[species]! *= times;
  const view = new TankView();
  view.setLight(1, 0);
  const tempC = plan.weather.tempC(12) + warmerC;
  view.read(amounts, 12, tempC, plan.weather.pco2AirUatm(12, tempC));
  return view;
}

const channelIn = (plan: Plan, id: string) => plan.channels.find((channel) => channel.id === id);

const files = import.meta.glob<Record<string, unknown>>('../../shared/processes/*.ts', {
  eager: true,
});
const isKind = (value: unknown): value is ProcessKind =>
  typeof value === 'object' && value !== null && 'bind' in value;

/** What a tank does of which nothing is said: none is ever added. */
const usual = [
  ...['calcification', 'skeletonMg', 'skeletonSr', 'photosynthesis', 'respiration'],
  ...['unseenRespiration', 'nitrification', 'acetateOxidation', 'formateOxidation', 'gasExchange'],
];

describe.each(processes.map((kind) => [kind.id, kind] as const))('the process %s', (id, kind) => {
  // By itself: where another does not balance, that one is red alone.
  const registry = processes.filter((one) => one.id === id || one.id === kind.follows);
  /** Tries a law in every tank that has the process. */
  const inAnyTank = (law: (plan: Plan, channel: Plan['channels'][number]) => void, full = 1000) => {
    let tanks = 0;
    fc.assert(
      fc.property(anyScenario, (scenario) => {
        const plan = compile(scenario, { registry });
        const channel = channelIn(plan, id);
        if (channel) law(plan, channel);
        if (channel) tanks++;
      }),
      runsOf(full),
    );
    expect(tanks, 'tanks that have it: does `settings` ever give any?').toBeGreaterThan(0);
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
        expect(rate(viewWith(plan, 1))).toSatisfy(Number.isFinite);
        for (const { index, moles } of tankTerms) {
          const made = moles * rate(viewWith(plan, 0, index));
          const way = `mol/h of ${dissolvedIds[index]} where there is none: let the rate fall to 0 with it`;
          expect(made, way).toBeGreaterThanOrEqual(0);
        }
      });
    },
    patience,
  );

  it(
    'has no step in its rate, whatever there is of what it moves, of carbon and of warmth',
    () => {
      inAnyTank((plan, { process, tankTerms }) => {
        const along = (name: string, view: (part: number) => TankView) =>
          expect(
            stepIn((part) => process.rate(view(part), process.settings, 1)),
            `part of the rate that comes in one step along ${name}: a narrow ramp instead`,
          ).toBeLessThan(1e-3);
        const moved = new Set([...tankTerms.map(({ index }) => index), indexOf.DIC]);
        for (const index of moved) {
          along(dissolvedIds[index] ?? 'water', (part) => viewWith(plan, 2 * part, index));
        }
        along('temperature', (part) => viewWith(plan, 1, undefined, 20 * part - 10));
      }, 300);
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

it('is in the registry wherever a file defines one', () => {
  const defined = Object.values(files).flatMap(Object.values).filter(isKind);
  const left = defined.filter((kind) => !processes.includes(kind)).map(({ id }) => id);
  expect(left, 'without their line in shared/processes/registry.ts').toEqual([]);
  expect(defined.length).toBe(processes.length);
});

it('is off in a plan that says nothing of it, so that no kept plan moves', () => {
  const running = compile(scenarioOf({})).channels.map(({ id }) => id);
  const added = running.filter((id) => !usual.includes(id));
  expect(added, 'a setting that is 0 by default, and null from `settings` there').toEqual([]);
  expect(running.toSorted()).toEqual(usual.toSorted());
});

it('names only species and pools that exist, so that alkalinity follows from the ions', () => {
  expect(Object.keys(dissolved)).not.toContain('alkalinity');
});
