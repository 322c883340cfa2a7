import { toFigures } from '../../shared/units/digits';
import { inverse, Matrix } from 'ml-matrix';
import { nextDailyTimeH } from '../../shared/scenario/clock';
import type { Scenario } from '../../shared/scenario/schema';
import { compile } from '../engine/compile';
import { settle } from '../engine/settle';
import { Simulation, usualOptions } from '../engine/simulation';

export interface GasSolution {
  readonly kLaPerH: number;
  /** Within which 19 in 20 tanks with these readings lie: room CO2, the word and the probe allow it. */
  readonly kLaRangePerH: readonly [low: number, high: number];
  readonly grossMmolPerLPerDay: number;
  /** What the model then reads at lights-on and lights-off. */
  readonly lightsOnPhNbs: number;
  readonly lightsOffPhNbs: number;
  /** False when no setting gives the readings within the probe's uncertainty. */
  readonly explains: boolean;
}

/** What a plain description of the aeration stands for, kLa per hour: common practice. */
const kLaOfAeration: Record<Scenario['gas']['aeration'], number> = {
  still: 0.15,
  rippled: 0.5,
  skimmer: 1.5,
  skimmerOutsideAir: 2.5,
};
/** The description is trusted to a factor of two, a probe to 0.05 between two readings. */
const LN_KLA_SPREAD = Math.LN2;
const PH_SPREAD = 0.05;
/** A CO2 meter, or a word for the windows, as a share (common practice); a probe's offset (common practice). */
const CO2_SPREAD = 0.15;
const OFFSET_SPREAD = 0.1;
const NINETEEN_IN_TWENTY = 1.96;
const ROUNDS = 12;

type Guess = readonly [lnKLa: number, grossMmolPerLPerDay: number];

function withGuess(scenario: Scenario, [lnKLa, gross]: Guess): Scenario {
  return {
    ...scenario,
    start: { ...scenario.start, carbon: 'settledCycle' },
    gas: { ...scenario.gas, kLaPerH: Math.exp(lnKLa) },
    photosynthesis: { ...scenario.photosynthesis, grossMmolPerLPerDay: gross },
  };
}

/** pH at lights-on and lights-off on the settled day of this guess. */
function readings(scenario: Scenario, guess: Guess): [number, number] {
  const trial = withGuess(scenario, guess);
  const settled = settle(trial, usualOptions);
  const plan = compile(trial, { ...settled, withoutEvents: true });
  const simulation = new Simulation(plan);
  const { onHour, hours } = trial.lights;
  const { clockHour } = trial.start;
  const onH = nextDailyTimeH(-1e-6, onHour, clockHour);
  const offH = nextDailyTimeH(-1e-6, (onHour + hours) % 24, clockHour);
  const ph = new Map<number, number>();
  for (const timeH of [onH, offH].sort((a, b) => a - b)) {
    simulation.advanceTo(timeH);
    ph.set(timeH, simulation.view.phNbs);
  }
  return [ph.get(onH)!, ph.get(offH)!];
}

/** Two readings and a trusted guess: weighted residuals, zero when all agree. */
function residuals(scenario: Scenario, guess: Guess): number[] {
  const { gas } = scenario;
  const [on, off] = readings(scenario, guess);
  return [
    (on - gas.lightsOnPhNbs) / PH_SPREAD,
    (off - gas.lightsOffPhNbs) / PH_SPREAD,
    (guess[0] - Math.log(kLaOfAeration[gas.aeration])) / LN_KLA_SPREAD,
  ];
}

const dot = (a: readonly number[], b: readonly number[]) =>
  a.reduce((sum, value, i) => sum + value * b[i]!, 0);

/** One damped Gauss–Newton step on two unknowns. */
function improve(scenario: Scenario, guess: Guess): Guess {
  const here = residuals(scenario, guess);
  const slope = (other: Guess, by: number) =>
    residuals(scenario, other).map((value, i) => (value - here[i]!) / by);
  const a = slope([guess[0] + 0.02, guess[1]], 0.02);
  const b = slope([guess[0], guess[1] + 0.02], 0.02);
  const [aa, ab, bb] = [dot(a, a) + 1e-6, dot(a, b), dot(b, b) + 1e-6];
  const [ar, br] = [dot(a, here), dot(b, here)];
  const determinant = aa * bb - ab * ab;
  const within = (value: number, most: number) => Math.max(-most, Math.min(most, value));
  return [
    guess[0] + within((-ar * bb + br * ab) / determinant, 0.7),
    Math.max(0, Math.min(10, guess[1] + within((-br * aa + ar * ab) / determinant, 1))),
  ];
}

/** One more digit than two readings carry would be invented. */
const rounded = (value: number): number => toFigures(value, 2);

/**
 * How far kLa may be off: the readings again with the room's CO2 and the probe's offset free inside
 * their own doubt, to first order about the solution.
 */
function kLaRange(scenario: Scenario, guess: Guess): readonly [number, number] {
  const here = residuals(scenario, guess);
  const slope = (moved: readonly number[], by: number) =>
    moved.map((value, i) => (value - here[i]!) / by);
  const { co2Ppm } = scenario.room;
  const airier = { ...scenario, room: { ...scenario.room, co2Ppm: co2Ppm * Math.exp(0.05) } };
  const columns = [
    [...slope(residuals(scenario, [guess[0] + 0.05, guess[1]]), 0.05), 0, 0],
    [...slope(residuals(scenario, [guess[0], guess[1] + 0.05]), 0.05), 0, 0],
    [...slope(residuals(airier, guess), 0.05), 1 / CO2_SPREAD, 0],
    [1 / PH_SPREAD, 1 / PH_SPREAD, 0, 0, 1 / OFFSET_SPREAD],
  ];
  const jacobian = new Matrix(columns);
  const covariance = inverse(jacobian.mmul(jacobian.transpose()));
  const by = NINETEEN_IN_TWENTY * Math.sqrt(covariance.get(0, 0));
  return [rounded(Math.exp(guess[0] - by)), rounded(Math.exp(guess[0] + by))];
}

/**
 * Solves the gas exchange and the photosynthesis that give the keeper's pH at lights-on and
 * lights-off in their room, starting from a plain word for the aeration.
 */
export function solveGas(asked: Scenario): GasSolution {
  // The readings belong to an ordinary day, whatever the seasons will do.
  const scenario: Scenario = {
    ...asked,
    evaporation: { ...asked.evaporation, factor: '1' },
    room: { ...asked.room, co2Factor: '1' },
  };
  let guess: Guess = [Math.log(kLaOfAeration[scenario.gas.aeration]), 0.5];
  for (let round = 0; round < ROUNDS; round++) {
    const next = improve(scenario, guess);
    const moved = Math.abs(next[0] - guess[0]) + Math.abs(next[1] - guess[1]);
    guess = next;
    if (moved < 1e-4) break;
  }
  const [kLaPerH, grossMmolPerLPerDay] = [rounded(Math.exp(guess[0])), rounded(guess[1])];
  const [lightsOnPhNbs, lightsOffPhNbs] = readings(scenario, [
    Math.log(kLaPerH),
    grossMmolPerLPerDay,
  ]);
  const { gas } = scenario;
  return {
    kLaPerH,
    kLaRangePerH: kLaRange(scenario, guess),
    grossMmolPerLPerDay,
    lightsOnPhNbs,
    lightsOffPhNbs,
    explains:
      Math.abs(lightsOnPhNbs - gas.lightsOnPhNbs) < 2 * PH_SPREAD &&
      Math.abs(lightsOffPhNbs - gas.lightsOffPhNbs) < 2 * PH_SPREAD,
  };
}
