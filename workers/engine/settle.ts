import { usedOmega } from '../../shared/processes/growthLaw';
import type { GrowthReference } from '../../shared/processes/process';
import type { Scenario } from '../../shared/scenario/schema';
import { pco2WetUatm } from '../../shared/seawater/gas';
import { Broyden, forgetful, type Answering } from './broyden';
import { plainGrowth, runDay, type Wanted } from './firstDay';
import { LeftRange } from './leftRange';
import { inOneGo, type Sliced } from './sliced';
import type { SettledStart, SimulationOptions } from './simulation';

/** What a trial starts from. */
export interface Settled extends SettledStart {
  /** False when the day has no cycle to settle on: carbon leaves faster than the air brings it. */
  readonly settled: boolean;
}

const LOWEST_UATM = 1;
/** A tenth of an atmosphere: no tank that anything lives in comes to rest above it. */
const HIGHEST_UATM = 1e5;
const [LOWEST, HIGHEST] = [Math.log(LOWEST_UATM), Math.log(HIGHEST_UATM)];
/** So close from one day to the next is settled, Ω. */
const CLOSE = 1e-5;
const QUICK_DAYS = 30;
/** Where those are thrown off, from the air and day after day as they come. */
const PLAIN_DAYS = 90;
const FEW_DAYS = 12;

/**
 * Finds the CO2 at which the first day ends as it began (dKH is the start's each time: the run-in is
 * at fixed dKH), together with what growth refers to so that this day takes what was typed: Broyden's
 * steps on the CO2's logarithm and the saturation. A tank much like one that is settled already is
 * sought from there, and by how that one answered.
 */
export const settle = (
  scenario: Scenario,
  options: SimulationOptions,
  near: SettledStart | undefined = options.near,
): Settled => inOneGo(settling(scenario, options, near));

/** The same, pausing after each day that it runs: a day of a hard tank takes a tenth of a second. */
export function* settling(
  scenario: Scenario,
  options: SimulationOptions,
  near: SettledStart | undefined = options.near,
): Sliced<Settled> {
  try {
    return yield* findCycle(scenario, options, near);
  } catch (error) {
    if (!(error instanceof LeftRange)) throw error;
    // A tank that dries up within a day has no cycle; the run itself will say where it ends.
    return { ...plainGrowth, pco2Uatm: roomPco2Uatm(scenario), settled: false };
  }
}

const roomPco2Uatm = ({ tank, room }: Scenario): number =>
  pco2WetUatm(room.co2Ppm, tank.tempC, tank.salinityPractical);

const moved = (a: GrowthReference, b: GrowthReference): number =>
  Math.max(Math.abs(a.omegaReference - b.omegaReference), Math.abs(a.stopOmega - b.stopOmega));

/** Most tanks answer about like this: each stays where it was by little, and more CO2 is less saturation. */
const usualAnswering: Answering = [
  [-1, -0.08],
  [-0.35, -0.85],
];

/** A reference that the keeper gives does not answer. */
const answeringOf = ({ start }: Scenario): Answering =>
  start.omegaReference > 0 ? forgetful : usualAnswering;

const begun = ({ start }: Scenario): Wanted =>
  start.omegaReference > 0 ? { ...plainGrowth, omegaReference: start.omegaReference } : plainGrowth;

const gapOf = (tried: GrowthReference, wanted: GrowthReference): number =>
  wanted.omegaReference - tried.omegaReference;

const withOmega = (growth: Wanted, omega: number): Wanted => ({
  ...growth,
  omegaReference: usedOmega(Math.max(0, omega)),
});

/** What growth refers to when the CO2 at the start is given. */
function* growthAt(
  scenario: Scenario,
  pco2Uatm: number | undefined,
  options: SimulationOptions,
): Sliced<Wanted> {
  const steps = new Broyden(answeringOf(scenario));
  let growth = begun(scenario);
  for (let i = 0; i < FEW_DAYS; i++) {
    const { wanted } = runDay(scenario, { ...growth, pco2Uatm }, options);
    yield;
    if (moved(growth, wanted) < CLOSE / 10) return wanted;
    const [, omega] = steps.next([0, growth.omegaReference], [0, gapOf(growth, wanted)]);
    growth = withOmega(wanted, omega);
  }
  return growth;
}

function* findCycle(
  scenario: Scenario,
  options: SimulationOptions,
  near: SettledStart | undefined,
): Sliced<Settled> {
  const { start } = scenario;
  const air = roomPco2Uatm(scenario);
  if (start.carbon !== 'settledCycle') {
    const fixed = start.carbon === 'airEquilibrium' ? air : undefined;
    return { pco2Uatm: air, ...(yield* growthAt(scenario, fixed, options)), settled: true };
  }
  const quick = new Broyden(near?.answering ?? answeringOf(scenario));
  const atRest = yield* comingToRest(scenario, options, {
    ...{ pco2Uatm: near?.pco2Uatm ?? air, growth: near ?? begun(scenario), days: QUICK_DAYS },
    steps: quick,
  });
  if (atRest) return { ...atRest, answering: quick.answering };
  const growth = yield* growthAt(scenario, air, options);
  const again = { pco2Uatm: air, growth, days: PLAIN_DAYS, steps: plainSteps };
  const slowly = yield* comingToRest(scenario, options, again);
  return slowly ?? { pco2Uatm: air, ...growth, settled: false };
}

const plainSteps: Pick<Broyden, 'next'> = { next: ([x, y], [gap, other]) => [x + gap, y + other] };

interface Search {
  readonly pco2Uatm: number;
  readonly growth: Wanted;
  readonly days: number;
  /** The next logarithm of the CO2 and saturation to try, from these and how far the day moved them. */
  readonly steps: Pick<Broyden, 'next'>;
}

/** Day after day until one ends as it began; undefined when none does, or carbon runs out. */
function* comingToRest(
  scenario: Scenario,
  options: SimulationOptions,
  { pco2Uatm: first, growth: given, days, steps }: Search,
): Sliced<Settled | undefined> {
  let growth = given;
  let x = Math.log(Math.max(LOWEST_UATM, first));
  for (let day = 0; day < days; day++) {
    const pco2Uatm = Math.exp(x);
    const { endPco2Uatm, wanted } = runDay(scenario, { ...growth, pco2Uatm }, options);
    yield;
    const gap = Math.log(Math.max(LOWEST_UATM, endPco2Uatm)) - x;
    if (Math.abs(gap) < 1e-6 && moved(growth, wanted) < CLOSE && endPco2Uatm > LOWEST_UATM) {
      return { pco2Uatm, ...wanted, settled: true };
    }
    const before = x;
    const [next, omega] = steps.next([x, growth.omegaReference], [gap, gapOf(growth, wanted)]);
    x = Math.min(Math.max(next, LOWEST), HIGHEST);
    growth = withOmega(wanted, omega);
    const stuck = x === before;
    if (stuck && (x === LOWEST || x === HIGHEST)) return undefined;
  }
  return undefined;
}
