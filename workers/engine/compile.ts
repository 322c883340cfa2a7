import type { Device, DeviceKind, VesselId, VesselRole } from '../../shared/devices/device';
import { deviceKinds } from '../../shared/devices/registry';
import type { TankEvent } from '../../shared/events/event';
import type { GrowthReference, ProcessKind, Start } from '../../shared/processes/process';
import { USUAL_STOP_OMEGA } from '../../shared/processes/growthLaw';
import { processes } from '../../shared/processes/registry';
import { noFactors, type Factors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { densityKgPerM3 } from '../../shared/seawater/density';
import { pco2WetUatm } from '../../shared/seawater/gas';
import { emptyBlock, indexOf, solutionKg } from '../../shared/species/block';
import { oxygenDemand } from '../../shared/species/oxygenDemand';
import type { LedgerRow } from '../../shared/trace/trace';
import { mixWater, type Carbon } from '../../shared/water/mixWater';
import { Books } from './books';
import { channelsOf, runningIn, type Channel } from './channels';
import { ledgerRows } from './ledgerRows';
import { plannedEvents } from './plannedEvents';
import type { TankState } from './tankState';
import { weatherOf, type Weather } from './weather';

/** A scenario made ready to run. */
export interface Plan {
  readonly scenario: Scenario;
  readonly start: Start;
  readonly books: Books;
  readonly channels: readonly Channel[];
  readonly devices: readonly Device[];
  /** Vessels from which evaporation is replaced, those that stand by from an earlier plan too. */
  readonly reservoirs: readonly VesselId[];
  readonly events: readonly TankEvent[];
  readonly ledger: readonly LedgerRow[];
  /** The row of what fills vessels, and of what goes on in them. */
  readonly refillRow: number;
  readonly weather: Weather;
  /** Whether corals grow in this plan. */
  readonly growing: boolean;
  /** Density of fresh water at the start's temperature: what is typed or shown in litres of it. */
  readonly freshKgPerL: number;
}

function startingCarbon(scenario: Scenario, pco2Uatm: number | undefined): Carbon {
  if (pco2Uatm !== undefined) return { pco2Uatm };
  const { start, room, tank } = scenario;
  return start.carbon === 'measuredPh'
    ? { phNbs: start.phNbs }
    : { pco2Uatm: pco2WetUatm(room.co2Ppm, tank.tempC, tank.salinityPractical) };
}

/** An expression of time that nobody sampled would be passed over in silence. */
function assertSampled({ evaporation, room }: Scenario, factors: Factors): void {
  const missing =
    (evaporation.factor.trim() !== '1' && !factors.evaporation) ||
    (room.co2Factor.trim() !== '1' && !factors.roomCo2);
  if (missing) throw new Error('sampleFactors comes before run: this scenario has an expression');
}

export interface CompileOptions extends Partial<GrowthReference> {
  /** Carbon dioxide that the water starts with, once the run-in has settled it. */
  readonly pco2Uatm?: number;
  /** Oxygen that it starts with; without it, what the air holds it at. */
  readonly oxygenMolPerKg?: number;
  /** Leaves out water changes, additions and faults: the run-in repeats an ordinary day. */
  readonly withoutEvents?: boolean;
  /** What was done to the tank, in order of time, instead of what the scenario plans. */
  readonly events?: readonly TankEvent[];
  readonly registry?: readonly ProcessKind[];
  readonly kinds?: readonly DeviceKind[];
  readonly factors?: Factors;
  /** Where another run has been: its rows stay in the ledger, and its bottles stand by. */
  readonly beside?: Pick<TankState, 'ledger' | 'vessels'>;
}

/** A vessel as the books open it; those of an earlier plan are filled from its state. */
interface StandingVessel {
  readonly id: VesselId;
  readonly role?: VesselRole | undefined;
  readonly contents: Float64Array;
}

/** Throws a RangeError with a table when a process's reaction does not balance. */
export function compile(asGiven: Scenario, options: CompileOptions = {}): Plan {
  const scenario = options.withoutEvents ? { ...asGiven, faults: [], responses: [] } : asGiven;
  const { tank } = scenario;
  const factors = options.factors ?? noFactors;
  assertSampled(scenario, factors);
  const water = mixWater({ ...tank, carbon: startingCarbon(scenario, options.pco2Uatm) });
  if (options.oxygenMolPerKg !== undefined) {
    water[indexOf.O2] = options.oxygenMolPerKg * solutionKg(water);
  }
  const start: Start = {
    scenario,
    volumeL: tank.volumeL,
    omegaReference: options.omegaReference ?? 4,
    otherUseEqPerDay: options.otherUseEqPerDay ?? 0,
    stopOmega: options.stopOmega ?? USUAL_STOP_OMEGA,
  };
  const devices = (options.kinds ?? deviceKinds).flatMap((kind) => kind.build(scenario, factors));

  const running = runningIn(start, options.registry ?? processes);
  const { ledger: before = [], vessels: standing = [] } = options.beside ?? {};
  const pipes = devices.flatMap((device) => device.pipes);
  const ledger = ledgerRows(running, pipes, before);
  const own = devices.flatMap((device) => device.vessels);
  const used: StandingVessel[] = [
    { id: 'tank', contents: water },
    { id: 'outside', contents: emptyBlock() },
    ...own,
  ];
  const idle = standing.filter(({ id }) => used.every((vessel) => vessel.id !== id));
  const vessels = [...used, ...idle.map(({ id, role }) => ({ id, role, contents: emptyBlock() }))];
  const demand = oxygenDemand(scenario.oxygen.perCarbon);
  const books = new Books(vessels, ledger.length, demand);
  for (const { undissolved } of own) {
    if (undissolved) books.amounts[books.poolIndex(undissolved.pool)]! += undissolved.mol;
  }
  return {
    scenario,
    start,
    books,
    channels: channelsOf(running, books, demand),
    devices,
    reservoirs: vessels.flatMap(({ id, role }) => (role === 'reservoir' ? [id] : [])),
    events: options.withoutEvents ? [] : (options.events ?? plannedEvents(scenario)),
    ledger,
    refillRow: ledger.length - 1,
    weather: weatherOf(scenario, factors),
    growing: running.some(({ kind: { role } }) => role === 'growth'),
    freshKgPerL: densityKgPerM3(tank.tempC, 0) / 1000,
  };
}
