import { INSTANT_H } from '../../shared/scenario/clock';
import type { GrowthReference } from '../../shared/processes/process';
import type { Factors } from '../../shared/scenario/factors';
import type { Pipe } from '../../shared/devices/device';
import { solutionKg, WATER, type Block } from '../../shared/species/block';
import { Agenda } from './agenda';
import type { Answering } from './broyden';
import { Books } from './books';
import { movingPools } from './channels';
import type { Plan } from './compile';
import { Flows } from './flows';
import { Reactions } from './reactions';
import { assertInRange, leftRangeBy, tooManySteps } from './leftRange';
import { scaleOverdraw } from './overdraw';
import { Oxygen } from './oxygen';
import { plantDoor } from './plantDoor';
import { Sensors } from './sensors';
import { SolidPools } from './solidPools';
import { Step } from './step';
import { Stride } from './stride';
import type { TankState } from './tankState';
import { TankMotion } from './tankMotion';
import { TankView } from './tankView';

/** What the run-in finds: CO2 and oxygen at the start, and what growth refers to. */
export interface SettledStart extends GrowthReference {
  readonly pco2Uatm: number;
  readonly oxygenMolPerKg?: number;
  /** How the days of the run-in answered to where they began: a tank much like it answers alike. */
  readonly answering?: Answering;
}

export interface SimulationOptions {
  /** Error allowed in one step, µmol/kg of alkalinity or carbon. */
  readonly toleranceUmolPerKg: number;
  /** What the scenario's expressions of time come to, hour by hour. */
  readonly factors?: Factors;
  /** Where a tank much like this one settled: the run-in is sought from there. */
  readonly near?: SettledStart;
}

export const usualOptions: SimulationOptions = { toleranceUmolPerKg: 0.02 };

/** No step may take more of the water than this share. */
const WATER_SHARE = 0.05;
/** More in one hour is a plan that cannot be followed; an hour of thirty busy pumps takes 2,000. */
const MOST_STEPS_PER_H = 20_000;

/** A tank that moves through time: steps under error control that land exactly on every switch. */
export class Simulation {
  timeH = 0;
  /** Water that the top-off has brought since the start, kg. */
  toppedOffKg = 0;
  readonly view = new TankView();
  readonly books: Books;
  readonly step: Step;
  readonly oxygen: Oxygen;
  /** Called after each accepted step, before anything is switched; `view` shows its end. */
  onStep: (() => void) | undefined;
  /** Called after each sudden event; `view` shows the tank right after it. */
  onJump: (() => void) | undefined;
  private readonly flows: Flows;
  private readonly reactions: Reactions;
  private readonly solids: SolidPools;
  private readonly sensors: Sensors;
  private readonly stride: Stride;
  private readonly agenda: Agenda;
  private readonly reservoirs: readonly Block[];
  private readonly topOffs: readonly { readonly pipe: Pipe; readonly from: Block }[];
  /** Oxygen moves no alkalinity, so any row would do; it comes with the air. */
  private readonly airRow: number;
  private nextEvent = 0;
  /** When a vessel that feeds an open pipe runs dry. */
  private dryAtH = 0;

  constructor(
    readonly plan: Plan,
    options: SimulationOptions = usualOptions,
    from?: Pick<TankState, 'timeH' | 'toppedOffKg' | 'tryH'>,
  ) {
    const { books, channels, devices, weather } = plan;
    const flows = new Flows(plan, books);
    const reactions = new Reactions(channels, books);
    const { view } = this;
    const watched = { channels, reactions, flows, weather, view, motion: new TankMotion() };
    this.books = books;
    this.flows = flows;
    this.reactions = reactions;
    this.solids = new SolidPools(channels, books);
    this.oxygen = new Oxygen(reactions, flows, books);
    this.step = new Step(watched, books, this.oxygen);
    this.sensors = new Sensors(plan.devices, this.view, this.step);
    this.stride = new Stride(this.step, this.sensors, options.toleranceUmolPerKg);
    this.agenda = new Agenda(plan.devices, this.view, plantDoor(plan, this.view));
    this.reservoirs = plan.reservoirs.map((id) => books.vessel(id));
    this.topOffs = devices
      .flatMap(({ pipes }) => pipes)
      .filter(({ role, to }) => role === 'topOff' && to === 'tank')
      .map((pipe) => ({ pipe, from: pipe.perKg ?? books.vessel(pipe.from) }));
    this.airRow = channels[movingPools(channels, books, 'air')[0]?.channel ?? -1]?.row ?? 0;
    if (from) {
      this.timeH = from.timeH;
      this.toppedOffKg = from.toppedOffKg;
      this.stride.tryH = from.tryH;
    }
    // The first look at a temperature takes exact constants, later ones the parabola's: constantsNear.
    this.look();
    this.look();
    this.actAfresh();
    this.landOnEvents();
  }

  get tryH(): number {
    return this.stride.tryH;
  }

  /** Moves on to a moment and stops exactly there, events of that moment included. */
  advanceTo(endH: number): void {
    const most = MOST_STEPS_PER_H * Math.max(1, endH - this.timeH);
    try {
      for (let steps = 0; this.timeH < endH - INSTANT_H; steps++) {
        if (steps > most) throw tooManySteps(this.timeH, most);
        this.advanceOnce(endH);
      }
    } catch (error) {
      throw leftRangeBy(error, this.timeH);
    }
  }

  private advanceOnce(endH: number): void {
    const stopH = Math.min(endH, this.nextSwitchH());
    const span = stopH - this.timeH;
    const hours = this.stride.take(span, this.hoursForWater());
    const landsAtH = hours === span ? stopH : this.timeH + hours;
    this.accept(hours, landsAtH, landsAtH === endH);
  }

  /** Hours in which a small share of the water leaves; long for every tank but one that dries up. */
  private hoursForWater(): number {
    const leavingKgPerH = this.flows.outKgPerH - this.flows.intoTank[WATER]!;
    return leavingKgPerH > 0 ? (this.books.tank[WATER]! * WATER_SHARE) / leavingKgPerH : Infinity;
  }

  /** Where a run stops it may be taken up: what follows hangs there on the tank's amounts alone. */
  private accept(hours: number, endH: number, stops: boolean): void {
    const { step, books, flows } = this;
    step.finish();
    const undone = this.solids.scale(step.extents);
    const scaled = (step.overdrawn() && this.scale(hours)) || undone;
    step.breathe();
    books.advance(this.reactions.terms, step.extents);
    for (const { pipe, from } of this.topOffs) {
      if (pipe.kgPerH > 0)
        this.toppedOffKg += hours * pipe.kgPerH * (from[WATER]! / solutionKg(from));
    }
    flows.book(hours, step.tankMeanPerKg);
    this.oxygen.book(this.airRow);
    this.timeH = endH;
    const afresh = scaled || stops;
    if (afresh) this.look();
    this.onStep?.();
    if (afresh) step.begin(books.tank, endH);
    else step.carryOn(books.tank, endH);
    this.switchWhatIsDue();
    assertInRange(this.view, this.plan.start.volumeL);
  }

  private scale(hours: number): boolean {
    const inflow = this.flows.intoTank.map((perH) => perH * hours);
    return scaleOverdraw(this.plan.channels, this.step.extents, this.books.tank, inflow);
  }

  /** Water left in the reservoirs, kg; what is dissolved in it takes no room of its own. */
  get reservoirKg(): number {
    let kg = 0;
    for (const reservoir of this.reservoirs) kg += reservoir[WATER]!;
    return kg;
  }

  private nextSwitchH(): number {
    const event = this.plan.events[this.nextEvent];
    return Math.min(this.agenda.nextH, this.dryAtH, event?.timeH ?? Infinity);
  }

  private switchWhatIsDue(): void {
    const { timeH, agenda } = this;
    const isDry = timeH >= this.dryAtH - INSTANT_H;
    if (isDry) agenda.actAll(timeH);
    else if (timeH >= agenda.nextH - INSTANT_H || this.sensors.reached()) agenda.actDue(timeH);
    else return this.landOnEvents();
    this.turnValves();
    // What a sensor calls for was decided a moment beyond its mark: the next step begins on it.
    if (this.step.isTrimmed) {
      this.look();
      this.step.begin(this.books.tank, timeH);
    } else this.step.turn();
    this.landOnEvents();
  }

  private landOnEvents(): void {
    for (;;) {
      const event = this.plan.events[this.nextEvent];
      if (!event || event.timeH > this.timeH + INSTANT_H) return;
      this.nextEvent++;
      event.apply(this.view, this.agenda.plant);
      // What an event sets off may be sudden: feel the way on from it.
      this.stride.feelTheWay();
      this.look();
      this.onJump?.();
      this.actAfresh();
    }
  }

  /** Every device looks and acts on water that is new. */
  private actAfresh(): void {
    this.agenda.actAll(this.timeH);
    this.turnValves();
    this.step.begin(this.books.tank, this.timeH);
  }

  private turnValves(): void {
    this.flows.update();
    this.dryAtH = this.timeH + this.flows.hoursUntilDry();
  }

  /** Shows the tank as the books have it now. */
  private look(): void {
    const tempC = this.plan.weather.tempC(this.timeH);
    const air = this.plan.weather.pco2AirUatm(this.timeH, tempC);
    this.view.read(this.books.tank, this.timeH, tempC, air);
  }
}
