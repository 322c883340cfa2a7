import { say } from '../../shared/words/ledger';
import type { Device, DeviceKind, VesselId } from '../../shared/devices/device';
import { firstFill } from '../../shared/devices/reservoirMix';
import { deviceKinds } from '../../shared/devices/registry';
import type { TankEvent } from '../../shared/events/event';
import { eventKinds } from '../../shared/events/registry';
import type {
  BoundProcess,
  GrowthReference,
  ProcessKind,
  Start,
} from '../../shared/processes/process';
import { USUAL_STOP_OMEGA } from '../../shared/processes/calcification';
import { processes } from '../../shared/processes/registry';
import { noFactors, type Factors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { densityKgPerM3 } from '../../shared/seawater/density';
import { pco2WetUatm } from '../../shared/seawater/gas';
import { emptyBlock, indexOf, solutionKg } from '../../shared/species/block';
import { oxygenDemand, oxygenOf, type OxygenDemand } from '../../shared/species/oxygenDemand';
import { assertBalanced, termsOf } from '../../shared/species/reaction';
import { dissolved, type DissolvedId, type PoolId } from '../../shared/species/species';
import type { LedgerRow } from '../../shared/trace/trace';
import { mixWater, type Carbon } from '../../shared/water/mixWater';
import { Books, type Term } from './books';
import type { TankState } from './tankState';
import { weatherOf, type Weather } from './weather';

/** A process made ready for this tank. */
export interface Channel {
  readonly id: string;
  readonly row: number;
  readonly terms: readonly Term[];
  /** The terms that fall in the tank, which the integrator needs. */
  readonly tankTerms: readonly Term[];
  /** mol of oxygen that a mole of it gives to the tank (+) or takes (−). */
  readonly oxygenMol: number;
  readonly process: BoundProcess;
}

/** Where the reaction that moves an account is, whatever it is called; −1 when none does. */
export const movingAccount = (channels: readonly Channel[], account: number): number =>
  channels.findIndex(({ terms }) => terms.some(({ index }) => index === account));

/** A scenario made ready to run. */
export interface Plan {
  readonly scenario: Scenario;
  readonly start: Start;
  readonly books: Books;
  readonly channels: readonly Channel[];
  readonly devices: readonly Device[];
  readonly events: readonly TankEvent[];
  readonly ledger: readonly LedgerRow[];
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

function compileChannel(
  id: string,
  process: BoundProcess,
  row: number,
  books: Books,
  demand: OxygenDemand,
): Channel {
  const { reaction } = process;
  assertBalanced(id, reaction);
  const named = termsOf(reaction).map(([id, moles]): Term => ({
    index: id in dissolved ? indexOf[id as DissolvedId] : books.poolIndex(id as PoolId),
    moles,
  }));
  const tankTerms = named.filter(({ index }) => index < books.tank.length);
  const oxygenMol = oxygenOf(reaction, demand);
  const terms = oxygenMol === 0 ? named : [...named, { index: indexOf.O2, moles: oxygenMol }];
  return { id, row, terms, tankTerms, oxygenMol, process };
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

/** What the scenario plans to do to the tank, in order of time. */
export const plannedEvents = (scenario: Scenario): TankEvent[] =>
  eventKinds.flatMap((kind) => kind.occurrences(scenario)).sort((a, b) => a.timeH - b.timeH);

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

  const running = (options.registry ?? processes).flatMap((kind) => {
    const process = kind.bind(start);
    return process === null ? [] : [{ kind, process }];
  });
  const pipes = devices.flatMap((device) => device.pipes);
  const rows: LedgerRow[] = [
    ...running.map(({ kind: { id, label, role } }) => ({ id, label, role })),
    ...pipes.map(({ id, label }) => ({ id, label, role: 'exchange' as const })),
    ...eventKinds.map(({ id, label }) => ({ id, label, role: 'exchange' as const })),
  ];
  const refill: LedgerRow = { id: 'refill', label: say.refills, role: 'exchange' };
  const { ledger: before = [], vessels: standing = [] } = options.beside ?? {};
  const named = new Set([...rows, refill].map(({ id }) => id));
  const ledger = [
    ...rows,
    ...before.map(({ row }) => row).filter(({ id }) => !named.has(id)),
    refill,
  ];
  const used: { id: VesselId; contents: Float64Array }[] = [
    { id: 'tank', contents: water },
    { id: 'outside', contents: emptyBlock() },
    ...devices.flatMap((device) => device.vessels),
  ];
  const idle = standing.filter(({ id }) => used.every((vessel) => vessel.id !== id));
  const vessels = [...used, ...idle.map(({ id }) => ({ id, contents: emptyBlock() }))];
  const demand = oxygenDemand(scenario.oxygen.perCarbon);
  const books = new Books(vessels, ledger.length, demand);
  books.amounts[books.poolIndex('reservoirLime')] = firstFill(scenario).solidLimeMol;
  return {
    scenario,
    start,
    books,
    channels: running.map(({ kind, process }, i) =>
      compileChannel(kind.id, process, i, books, demand),
    ),
    devices,
    events: options.withoutEvents ? [] : (options.events ?? plannedEvents(scenario)),
    ledger,
    weather: weatherOf(scenario, factors),
    growing: running.some(({ kind: { role } }) => role === 'growth'),
    freshKgPerL: densityKgPerM3(tank.tempC, 0) / 1000,
  };
}
