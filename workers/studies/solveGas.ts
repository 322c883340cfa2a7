import { toFigures } from '../../shared/units/digits';
import { inverse, Matrix } from 'ml-matrix';
import { nextDailyTimeH } from '../../shared/scenario/clock';
import type { Scenario } from '../../shared/scenario/schema';
import { compile } from '../engine/compile';
import { settle } from '../engine/settle';
import { Simulation, usualOptions } from '../engine/simulation';
import { leastSquares } from './fit/leastSquares';

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
/** Nobody's word for the aeration is off by more of its own doubt; nearer than this, in σ, is there. */
const FARTHEST = 8;
const CLOSE = 1e-3;

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

/** What two readings and a trusted guess are met by, each in units of its own σ. */
const rowsAt = (scenario: Scenario, guess: Guess): number[] => {
  const [on, off] = readings(scenario, guess);
  return [on / PH_SPREAD, off / PH_SPREAD, guess[0] / LN_KLA_SPREAD];
};

function solved(scenario: Scenario): Guess {
  const { gas } = scenario;
  const lnKLa = Math.log(kLaOfAeration[gas.aeration]);
  const { values } = leastSquares({
    targets: [gas.lightsOnPhNbs / PH_SPREAD, gas.lightsOffPhNbs / PH_SPREAD, lnKLa / LN_KLA_SPREAD],
    predict: ([own, gross]) => rowsAt(scenario, [own!, gross!]),
    initial: [lnKLa, 0.5],
    min: [lnKLa - FARTHEST * LN_KLA_SPREAD, 0],
    max: [lnKLa + FARTHEST * LN_KLA_SPREAD, 10],
    mayEnd: [true, true],
    step: [0.02, 0.02],
    close: CLOSE,
    mostRounds: ROUNDS,
  });
  return [values[0]!, values[1]!];
}

/** One more digit than two readings carry would be invented. */
const rounded = (value: number): number => toFigures(value, 2);

/**
 * How far kLa may be off: the readings again with the room's CO2 and the probe's offset free inside
 * their own doubt, to first order about the solution.
 */
function kLaRange(scenario: Scenario, guess: Guess): readonly [number, number] {
  const here = rowsAt(scenario, guess);
  const slope = (moved: readonly number[], by: number) =>
    moved.map((value, i) => (value - here[i]!) / by);
  const { co2Ppm } = scenario.room;
  const airier = { ...scenario, room: { ...scenario.room, co2Ppm: co2Ppm * Math.exp(0.05) } };
  const columns = [
    [...slope(rowsAt(scenario, [guess[0] + 0.05, guess[1]]), 0.05), 0, 0],
    [...slope(rowsAt(scenario, [guess[0], guess[1] + 0.05]), 0.05), 0, 0],
    [...slope(rowsAt(airier, guess), 0.05), 1 / CO2_SPREAD, 0],
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
  const guess = solved(scenario);
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
