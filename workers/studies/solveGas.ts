import { nextDailyTimeH } from '../../shared/scenario/clock';
import type { Scenario } from '../../shared/scenario/schema';
import { compile } from '../engine/compile';
import { settle } from '../engine/settle';
import { Simulation, usualOptions } from '../engine/simulation';

export interface GasSolution {
  readonly kLaPerH: number;
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
  const rounded: Guess = [
    Math.log(Number(Math.exp(guess[0]).toFixed(3))),
    Number(guess[1].toFixed(3)),
  ];
  const [lightsOnPhNbs, lightsOffPhNbs] = readings(scenario, rounded);
  const { gas } = scenario;
  return {
    kLaPerH: Number(Math.exp(rounded[0]).toFixed(3)),
    grossMmolPerLPerDay: rounded[1],
    lightsOnPhNbs,
    lightsOffPhNbs,
    explains:
      Math.abs(lightsOnPhNbs - gas.lightsOnPhNbs) < 2 * PH_SPREAD &&
      Math.abs(lightsOffPhNbs - gas.lightsOffPhNbs) < 2 * PH_SPREAD,
  };
}
