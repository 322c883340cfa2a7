import { dayWeights, stopOmegaFor, USUAL_STOP_OMEGA } from '../../shared/processes/growthLaw';
import type { GrowthReference } from '../../shared/processes/process';
import { indexOf } from '../../shared/species/block';
import { noFactors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { compile, type Plan } from './compile';
import { LitPath } from './litPath';
import { Simulation, type SimulationOptions } from './simulation';

/** What the run-in goes on with; without an oxygen the water starts with what the air holds it at. */
export interface Wanted extends GrowthReference {
  readonly oxygenMolPerKg?: number;
}

/** What the run-in tries a day with; without a CO2 the water starts as the scenario says. */
export interface Tried extends Wanted {
  readonly pco2Uatm: number | undefined;
}

/** What a tried day came to. */
export interface Day {
  readonly endPco2Uatm: number;
  /**
   * What growth refers to if the next day is as this one, so that it takes what was typed, and the
   * oxygen at which such a day ends as it begins.
   */
  readonly wanted: Wanted;
}

export const plainGrowth: Wanted = {
  omegaReference: 4,
  stopOmega: USUAL_STOP_OMEGA,
  otherUseEqPerDay: 0,
};

/** Equivalents that what lives, corals' growth aside, has taken from the tank. */
const otherUseEq = ({ ledger, books }: Plan): number =>
  ledger.reduce((sum, { role }, i) => (role === 'life' ? sum - books.ledgerEq[i]! : sum), 0);

/** Watches the saturation of a tank as it steps through a day. */
function watchPath(simulation: Simulation, { corals, lights }: Scenario): LitPath {
  const weights = dayWeights(corals.lightDarkRatio, lights.hours);
  const litAt = (timeH: number, omega: number) => ({
    weight: weights.dark + (weights.light - weights.dark) * simulation.view.lightAt(timeH),
    omega,
  });
  const path = new LitPath();
  let lastH = 0;
  let lastOmega = simulation.view.omegaAragonite;
  simulation.onStep = () => {
    const { view, step } = simulation;
    const { timeH, omegaAragonite } = view;
    const hours = timeH - lastH;
    // A cubic through both ends and their slopes.
    const bulge = (hours * (step.begins.omegaPerH - step.ends.omegaPerH)) / 8;
    const middle = litAt((lastH + timeH) / 2, (lastOmega + omegaAragonite) / 2 + bulge);
    path.add(hours, litAt(lastH, lastOmega), middle, litAt(timeH, omegaAragonite));
    lastH = timeH;
    lastOmega = omegaAragonite;
  };
  return path;
}

/** Runs the plan's first day, without its events. */
export function runDay(scenario: Scenario, tried: Tried, options: SimulationOptions): Day {
  const { pco2Uatm, ...growth } = tried;
  const plan = compile(scenario, {
    ...growth,
    withoutEvents: true,
    factors: options.factors ?? noFactors,
    ...(pco2Uatm === undefined ? {} : { pco2Uatm }),
  });
  const simulation = new Simulation(plan, options);
  const path = watchPath(simulation, scenario);
  const startMol = plan.books.tank[indexOf.O2]!;
  const startKg = simulation.view.solutionKg;
  simulation.advanceTo(24);
  const { omegaReference: given } = scenario.start;
  return {
    endPco2Uatm: simulation.view.pco2Uatm,
    wanted: {
      oxygenMolPerKg: simulation.oxygen.cyclicMol(startMol) / startKg,
      otherUseEqPerDay: otherUseEq(plan),
      // A reference that the keeper gives stands, and the day takes what follows from it.
      omegaReference: given > 0 ? given : path.meanOmega,
      stopOmega:
        given > 0 ? USUAL_STOP_OMEGA : stopOmegaFor(path.lowestOmega, scenario.corals.measuredAs),
    },
  };
}
