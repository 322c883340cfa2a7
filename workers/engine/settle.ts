import { dayWeights } from '../../shared/processes/calcification';
import { noFactors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { pco2WetUatm } from '../../shared/seawater/gas';
import { compile } from './compile';
import { DayMean } from './dayMean';
import { LeftRange } from './leftRange';
import { Simulation, type SettledStart, type SimulationOptions } from './simulation';

/** What a trial starts from. */
export interface Settled extends SettledStart {
  /** False when the day has no cycle to settle on: carbon leaves faster than the air brings it. */
  readonly settled: boolean;
}

interface Day {
  readonly endPco2Uatm: number;
  readonly omegaReference: number;
}

const LOWEST_UATM = 1;

/** Runs the plan's first day, without its events, from a given CO2 and reference saturation. */
function runDay(
  scenario: Scenario,
  pco2Uatm: number | undefined,
  omegaReference: number,
  options: SimulationOptions,
): Day {
  const plan = compile(scenario, {
    omegaReference,
    withoutEvents: true,
    factors: options.factors ?? noFactors,
    ...(pco2Uatm === undefined ? {} : { pco2Uatm }),
  });
  const simulation = new Simulation(plan, options);
  const { corals, lights } = scenario;
  const weights = dayWeights(corals.lightDarkRatio, lights.hours);
  const litAt = (timeH: number) =>
    weights.dark + (weights.light - weights.dark) * simulation.view.lightAt(timeH);
  const mean = new DayMean();
  let lastH = 0;
  let lastOmega = simulation.view.omegaAragonite;
  simulation.onStep = () => {
    const { timeH, omegaAragonite } = simulation.view;
    mean.add(timeH - lastH, litAt(lastH), litAt(timeH), lastOmega, omegaAragonite);
    lastH = timeH;
    lastOmega = omegaAragonite;
  };
  simulation.advanceTo(24);
  return { endPco2Uatm: simulation.view.pco2Uatm, omegaReference: mean.value };
}

/**
 * Finds the CO2 at which the first day ends as it began, by secant steps on its logarithm (dKH is
 * the start's each time: the run-in is at fixed dKH), together with the day's mean saturation.
 * A tank much like one that is settled already is sought from there.
 */
export function settle(
  scenario: Scenario,
  options: SimulationOptions,
  near: SettledStart | undefined = options.near,
): Settled {
  try {
    return findCycle(scenario, options, near);
  } catch (error) {
    if (!(error instanceof LeftRange)) throw error;
    // A tank that dries up within a day has no cycle; the run itself will say where it ends.
    return { pco2Uatm: roomPco2Uatm(scenario), omegaReference: 4, settled: false };
  }
}

const roomPco2Uatm = ({ tank, room }: Scenario): number =>
  pco2WetUatm(room.co2Ppm, tank.tempC, tank.salinityPractical);

/** The first day's own mean saturation, when its CO2 at the start is given. */
function meanOmega(
  scenario: Scenario,
  pco2Uatm: number | undefined,
  options: SimulationOptions,
): number {
  let omegaReference = 4;
  for (let i = 0; i < 8; i++) {
    const day = runDay(scenario, pco2Uatm, omegaReference, options);
    const moved = Math.abs(day.omegaReference - omegaReference);
    ({ omegaReference } = day);
    if (moved < 1e-6) break;
  }
  return omegaReference;
}

function findCycle(
  scenario: Scenario,
  options: SimulationOptions,
  near: SettledStart | undefined,
): Settled {
  const { start } = scenario;
  const air = roomPco2Uatm(scenario);
  let omegaReference = near?.omegaReference ?? 4;
  if (start.carbon !== 'settledCycle') {
    const fixed = start.carbon === 'airEquilibrium' ? air : undefined;
    return { pco2Uatm: air, omegaReference: meanOmega(scenario, fixed, options), settled: true };
  }
  let before: { x: number; gap: number } | undefined;
  let x = Math.log(near?.pco2Uatm ?? air);
  for (let i = 0; i < 30; i++) {
    const day = runDay(scenario, Math.exp(x), omegaReference, options);
    const gap = Math.log(Math.max(LOWEST_UATM, day.endPco2Uatm)) - x;
    const drift = Math.abs(day.omegaReference - omegaReference);
    ({ omegaReference } = day);
    if (Math.abs(gap) < 1e-6 && drift < 1e-5 && day.endPco2Uatm > LOWEST_UATM) {
      return { pco2Uatm: Math.exp(x), omegaReference, settled: true };
    }
    const slope = before && before.x !== x ? (gap - before.gap) / (x - before.x) : -1;
    before = { x, gap };
    // A period map that hardly pulls back would send the secant far away: at most a factor e.
    const move = slope < -1e-4 ? -gap / slope : gap;
    x = Math.max(Math.log(LOWEST_UATM), x + Math.max(-1, Math.min(1, move)));
  }
  return { pco2Uatm: air, omegaReference: meanOmega(scenario, air, options), settled: false };
}
