import fc from 'fast-check';
import { expect, it } from 'vitest';
import { processes } from '../../shared/processes/registry';
import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import { indexOf, saltKg, WATER, type Block } from '../../shared/species/block';
import { compile } from '../../workers/engine/compile';
import { Look } from '../../workers/engine/look';
import { Simulation } from '../../workers/engine/simulation';
import { anyScenario } from './anyScenario';
import { endOrLeave } from './endOrLeave';
import { patience, runsOf } from './size';

const EPSILON_H = 1e-3;
/** Where salinity moves faster, its part in density, and the salt that keeps it still, are no trifle. */
const STILL_PSU_PER_H = 0.01;
const NACL_KG_PER_MOL = molarMassGPerMol({ Na: 1, Cl: 1 }) / 1000;
/** What that comes to of the rate and its slope together: in nearly all looks, and at an onset or a ramp of temperature. */
const NEAR = 2e-3;
const AT_MOST = 0.1;

/** Less than this of all its ammonia beyond the level that stands: a difference as small as what salinity does to the volume. */
const STANDING = 1e-4;

/** How fast salinity moves. */
function psuPerH({ step, view }: Simulation): number {
  const { slope, saltKgPerH } = step.begins;
  const perKg = (saltKgPerH + slope[WATER]!) / view.solutionKg;
  return Math.abs(view.salinityPractical * (saltKgPerH / view.saltKg - perKg));
}

/** A drift leaves out how salinity pulls at the constants: table salt keeps it where it was. */
function saltedTo(massFraction: number, tank: Block): Block {
  const salt = saltKg(tank);
  const missing = (massFraction * (salt + tank[WATER]!) - salt) / (1 - massFraction);
  for (const ion of ['Na', 'Cl'] as const) tank[indexOf[ion]]! += missing / NACL_KG_PER_MOL;
  return tank;
}

/** The rates a moment before or after the look with which the next step begins. */
function ratesAfter({ step, timeH, view }: Simulation, hours: number): Float64Array {
  const { begins, from, watched } = step;
  const chalkMol = view.precipitateMol;
  const look = new Look(watched);
  view.precipitateMol = chalkMol + hours * begins.chalkMolPerH;
  const then = from.map((amount, i) => amount + hours * begins.slope[i]!);
  look.at(saltedTo(view.saltKg / view.solutionKg, then), timeH + hours, hours < 0 ? -1 : 1);
  view.precipitateMol = chalkMol;
  return look.rates;
}

it(
  'a drift is what the rate’s difference quotient says, none where the rate stays, in any tank at any hour',
  () => {
    const looks = new Map<string, { all: number; near: number }>();
    let [asked, bent] = [0, 0];
    fc.assert(
      fc.property(anyScenario, fc.integer({ min: 1, max: 40 }), (scenario, hour) => {
        const simulation = new Simulation(compile(scenario));
        if (endOrLeave(simulation, hour) === 'left') return;
        if (psuPerH(simulation) > STILL_PSU_PER_H) return;
        const { step, plan } = simulation;
        const [rates, drifts] = [step.begins.rates.slice(), step.begins.drifts.slice()];
        const [before, after] = [-EPSILON_H, EPSILON_H].map((h) => ratesAfter(simulation, h));
        const standsMolPerH =
          STANDING * scenario.filter.nitrificationPerH * step.from[indexOf.TAN]!;
        plan.channels.forEach(({ id, process }, c) => {
          if (id === 'nitrification' && Math.abs(rates[c]!) < standsMolPerH) return;
          const forward = (after![c]! - rates[c]!) / EPSILON_H;
          const backward = (rates[c]! - before![c]!) / EPSILON_H;
          const size = Math.abs(rates[c]!) + Math.abs(forward) + Math.abs(backward);
          asked++;
          // A corner of a law, or a switch of the clock, has two slopes.
          if (Math.abs(forward - backward) > 0.02 * size) return void bent++;
          const moves = (forward + backward) / 2;
          const off = Math.abs(drifts[c]! - moves);
          const stated = process.drift ? `a drift of ${drifts[c]!}` : 'no drift';
          const told = `${id} states ${stated}, its rate goes by ${moves} mol/h²`;
          expect(off, told).toBeLessThanOrEqual(AT_MOST * size);
          const of = looks.get(id) ?? { all: 0, near: 0 };
          looks.set(id, of);
          of.all++;
          of.near += Number(off <= NEAR * size);
        });
      }),
      runsOf(2000),
    );
    expect(bent).toBeLessThan(0.05 * asked);
    const unasked = processes.map(({ id }) => id).filter((id) => !looks.has(id));
    expect(unasked, 'off in every tank, or with rates that are no numbers').toEqual([]);
    for (const [id, { all, near }] of looks) {
      expect(near, `looks of ${all} at ${id} whose drift is near`).toBeGreaterThan(0.85 * all);
    }
  },
  patience,
);
