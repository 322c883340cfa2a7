import { Reaction } from '../../shared/species/reaction';
import { describe, expect, it } from 'vitest';
import { calcification } from '../../shared/processes/calcification';
import { defineProcess } from '../../shared/processes/process';
import { processes } from '../../shared/processes/registry';
import { indexOf } from '../../shared/species/block';
import { ClosureCheck } from '../../workers/engine/closures';
import { compile, type Plan } from '../../workers/engine/compile';
import { Simulation } from '../../workers/engine/simulation';
import { scenarioFromFile } from '../runs/scenarioFiles';

const ALKALINITY_LIMIT = 1e-3;
const ELEMENT_LIMIT = 1e-12;

/** Runs two days with a mistake put in before or on the way, and asks both closures. */
function runWith(breakIt: (plan: Plan, when: 'before' | 'underway') => void) {
  const plan = compile(scenarioFromFile('limewater-holds.json'));
  const check = new ClosureCheck(plan.books);
  breakIt(plan, 'before');
  const simulation = new Simulation(plan);
  simulation.advanceTo(24);
  breakIt(plan, 'underway');
  simulation.advanceTo(48);
  const { alkalinityUmolPerKg, elements } = check.measure();
  return {
    alkalinityCaught: !(alkalinityUmolPerKg < ALKALINITY_LIMIT),
    elementsCaught: Object.entries(elements)
      .filter(([, off]) => !(off < ELEMENT_LIMIT))
      .map(([element]) => element),
  };
}

/** Changes a coefficient of a compiled reaction, as a slip in the table would. */
function slip({ channels }: Plan, id: string, species: 'Ca' | 'DIC' | 'O2', moles: number) {
  const terms = channels.find((channel) => channel.id === id)!.terms;
  const term = terms.find(({ index }) => index === indexOf[species])! as { moles: number };
  term.moles = moles;
}

describe('the two closures', () => {
  it('are both content with an honest run', () => {
    expect(runWith(() => {})).toEqual({ alkalinityCaught: false, elementsCaught: [] });
  });

  it('catch a change that nobody booked by the alkalinity, where no element tells', () => {
    const caught = runWith(({ books }, when) => {
      if (when === 'underway') books.tank[indexOf.untrackedCharge]! += 1e-5;
    });
    expect(caught).toEqual({ alkalinityCaught: true, elementsCaught: [] });
  });

  it('catch sodium that nobody booked by both', () => {
    const caught = runWith(({ books }, when) => {
      if (when === 'underway') books.tank[indexOf.Na]! += 1e-5;
    });
    expect(caught).toEqual({ alkalinityCaught: true, elementsCaught: ['Na'] });
  });

  it('catch a wrong coefficient that is booked consistently by the element alone', () => {
    const caught = runWith((plan, when) => {
      if (when === 'before') slip(plan, 'calcification', 'Ca', -0.9);
    });
    expect(caught).toEqual({ alkalinityCaught: false, elementsCaught: ['Ca'] });
  });

  it('catch oxygen that a reaction does not account for by the element alone', () => {
    const caught = runWith((plan, when) => {
      if (when === 'before') slip(plan, 'respiration', 'O2', -1.05);
    });
    expect(caught).toEqual({ alkalinityCaught: false, elementsCaught: ['O'] });
  });

  it('catch carbon from nowhere by the element alone, since it carries no alkalinity', () => {
    const caught = runWith((plan, when) => {
      if (when === 'before') slip(plan, 'gasExchange', 'DIC', 1.01);
    });
    expect(caught).toEqual({ alkalinityCaught: false, elementsCaught: ['C'] });
  });
});

describe('a reaction that does not balance', () => {
  const leaky = defineProcess({
    ...calcification,
    id: 'leaky',
    reaction: () => new Reaction({ Ca: -1, DIC: -1 }),
  });

  it('is refused when the tank is compiled, with a table of the elements that are off', () => {
    const registry = [...processes, leaky];
    const scenario = scenarioFromFile('limewater-holds.json');
    expect(() => compile(scenario, { registry })).toThrow(RangeError);
    expect(() => compile(scenario, { registry })).toThrow(
      /'leaky' does not balance[\s\S]*Ca\s+-1\.0+ mol[\s\S]*C\s+-1\.0+ mol/,
    );
  });
});
