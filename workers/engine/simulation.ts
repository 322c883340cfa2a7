import type { Plant } from '../../shared/devices/device';
import { indexOf, saltKg, solutionKg, WATER, type Block } from '../../shared/species/block';
import { Books } from './books';
import type { Plan } from './compile';
import { Flows } from './flows';
import { scaleOverdraw } from './overdraw';
import { Step } from './step';
import { TankView, volumeL } from './tankView';

export interface SimulationOptions {
  /** Error allowed in one step, µmol/kg of alkalinity or carbon. */
  readonly toleranceUmolPerKg: number;
}

export const usualOptions: SimulationOptions = { toleranceUmolPerKg: 0.02 };

/** Closer than this to a moment is that moment, h (4 µs). */
const INSTANT_H = 1e-9;
const SMALLEST_STEP_H = 1e-6;
/** A step is aimed a hair beyond a sensor's mark, and may end half a second late. */
const AIM_BEYOND_H = 0.2 / 3600;
const LATE_H = 0.5 / 3600;

/** A tank that moves through time: steps under error control that land exactly on every switch. */
export class Simulation {
  timeH = 0;
  /** Solution that the top-off has brought since the start, kg. */
  toppedOffKg = 0;
  readonly view = new TankView();
  readonly books: Books;
  readonly step: Step;
  /** Called after each accepted step, before anything is switched; `view` shows its end. */
  onStep: (() => void) | undefined;
  private readonly flows: Flows;
  private readonly plant: Plant;
  private readonly reservoir: Block | undefined;
  private readonly topOffPipe: { readonly kgPerH: number };
  private nextEvent = 0;
  private switchAtH = 0;
  /** How far each device's sensor was from its mark when the step began. */
  private readonly gaps: number[] = [];
  private tryH = 0.25;

  constructor(
    readonly plan: Plan,
    private readonly options: SimulationOptions = usualOptions,
  ) {
    this.books = plan.books;
    this.flows = new Flows(plan, this.books);
    this.step = new Step(plan.channels, this.flows, plan.weather, this.view);
    this.plant = this.makePlant();
    this.reservoir = plan.devices.some(({ id }) => id === 'topOff')
      ? this.books.vessel('reservoir')
      : undefined;
    this.topOffPipe = plan.devices
      .flatMap(({ pipes }) => pipes)
      .find(({ id }) => id === 'topOff') ?? {
      kgPerH: 0,
    };
    this.look();
    this.actAll();
    this.landOnEvents();
  }

  /** Moves on to a moment and stops exactly there, events of that moment included. */
  advanceTo(endH: number): void {
    while (this.timeH < endH - INSTANT_H) this.advanceOnce(endH);
  }

  private advanceOnce(endH: number): void {
    const stopH = Math.min(endH, this.nextSwitchH());
    const span = stopH - this.timeH;
    const aimed = this.hoursUntilSensor();
    const target = Math.min(span, aimed);
    let hours = Math.min(target, this.tryH);
    // Two even steps instead of one long and one sliver.
    if (hours < target && hours > target * 0.6) hours = target / 2;
    hours = this.attemptWithin(hours);
    hours = this.shortenToSensor(hours);
    this.accept(hours, hours === span ? stopH : this.timeH + hours);
  }

  /** Tries shorter steps until the error is inside the tolerance. */
  private attemptWithin(first: number): number {
    let hours = first;
    for (;;) {
      const error = this.step.attempt(hours) / this.options.toleranceUmolPerKg;
      if (!(error < Infinity)) this.refuse();
      const factor = error === 0 ? 5 : Math.min(5, Math.max(0.2, 0.9 * Math.cbrt(1 / error)));
      if (error <= 1) {
        // A step cut short by a switch says little about the next: only let it grow the trial.
        this.tryH = Math.min(1, Math.max(hours * factor, factor >= 1 ? this.tryH : 0));
        return hours;
      }
      if (hours <= SMALLEST_STEP_H) return hours;
      hours = Math.max(SMALLEST_STEP_H, hours * factor);
      this.tryH = hours;
    }
  }

  /** If a sensor was passed on the way by more than a moment, goes back and stops at it. */
  private shortenToSensor(first: number): number {
    let hours = first;
    for (let tries = 0; tries < 20; tries++) {
      const part = this.partUntilSensor(hours);
      if (part >= 1) return hours;
      hours = Math.max(INSTANT_H, hours * part + AIM_BEYOND_H);
      this.step.attempt(hours);
    }
    return hours;
  }

  /** The part of the step just tried at which the first sensor was passed; 1 when in time. */
  private partUntilSensor(hours: number): number {
    const { devices } = this.plan;
    let part = 1;
    for (let i = 0; i < devices.length; i++) {
      const end = devices[i]!.watch(this.view);
      const begin = this.gaps[i]!;
      if (end >= 0 || begin <= 0 || (hours * end) / (end - begin) < LATE_H) continue;
      part = Math.min(part, begin / (begin - end));
    }
    return part;
  }

  private accept(hours: number, endH: number): void {
    const { step, books, flows, plan } = this;
    step.finish();
    const scaled = step.overdrawn() && this.scale(hours);
    for (let c = 0; c < plan.channels.length; c++) {
      const channel = plan.channels[c]!;
      books.react(channel.row, channel.terms, step.extents[c]!);
    }
    flows.book(hours, step.tankMeanPerKg);
    this.toppedOffKg += hours * this.topOffPipe.kgPerH;
    this.timeH = endH;
    this.onStep?.();
    if (scaled) step.begin(books.tank, endH);
    else step.carryOn(books.tank, endH);
    this.switchWhatIsDue();
  }

  private scale(hours: number): boolean {
    const inflow = this.flows.intoTank.map((perH) => perH * hours);
    return scaleOverdraw(this.plan.channels, this.step.extents, this.books.tank, inflow);
  }

  /** Water left in the top-off reservoir with what is dissolved in it, kg. */
  get reservoirKg(): number {
    return this.reservoir ? solutionKg(this.reservoir) : 0;
  }

  private nextSwitchH(): number {
    const event = this.plan.events[this.nextEvent];
    return event ? Math.min(this.switchAtH, event.timeH) : this.switchAtH;
  }

  /** When the clock moves a device or a vessel runs dry: fixed until the next act. */
  private findSwitch(): number {
    let next = this.timeH + this.flows.hoursUntilDry();
    for (const device of this.plan.devices) next = Math.min(next, device.nextClockH(this.timeH));
    return next;
  }

  /** The tank's volume after so many hours, if everything goes on as it goes now. */
  private litresAfter(hours: number, saltKgPerH: number, waterKgPerH: number): number {
    const { view } = this;
    const salt = view.saltKg + hours * saltKgPerH;
    const solution = view.solutionKg + hours * (saltKgPerH + waterKgPerH);
    return volumeL(salt, solution, view.tempC);
  }

  /** Volume moves almost evenly between switches, so a sensor's moment can be aimed at. */
  private hoursUntilSensor(): number {
    const slope = this.step.slopes[0]!;
    const saltKgPerH = saltKg(slope);
    const { devices } = this.plan;
    let hours = Infinity;
    for (let i = 0; i < devices.length; i++) {
      const device = devices[i]!;
      const gap = device.watch(this.view);
      this.gaps[i] = gap;
      const perL = device.watchPerL();
      if (perL !== 0) hours = Math.min(hours, this.hoursToClose(gap, -perL, saltKgPerH, slope));
    }
    return Math.max(hours, SMALLEST_STEP_H);
  }

  /** Hours until a gap closes; two looks ahead, since volume is not quite straight in time. */
  private hoursToClose(gap: number, perL: number, saltKgPerH: number, slope: Block): number {
    let aim = 0.5;
    for (let i = 0; i < 2; i++) {
      const litres = this.litresAfter(aim, saltKgPerH, slope[WATER]!) - this.view.volumeL;
      if (litres * perL <= 0) return Infinity;
      aim = (gap * aim) / (litres * perL);
    }
    return aim + AIM_BEYOND_H;
  }

  private switchWhatIsDue(): void {
    if (this.timeH >= this.switchAtH - INSTANT_H || this.sensorReached()) {
      this.actAll();
    }
    this.landOnEvents();
  }

  private sensorReached(): boolean {
    const { devices } = this.plan;
    for (let i = 0; i < devices.length; i++) if (devices[i]!.watch(this.view) <= 0) return true;
    return false;
  }

  private landOnEvents(): void {
    for (;;) {
      const event = this.plan.events[this.nextEvent];
      if (!event || event.timeH > this.timeH + INSTANT_H) return;
      this.nextEvent++;
      event.apply(this.view, this.plant);
      this.look();
      this.actAll();
    }
  }

  private actAll(): void {
    for (const device of this.plan.devices) device.act(this.view, this.plant);
    this.flows.update();
    this.step.begin(this.books.tank, this.timeH);
    this.switchAtH = this.findSwitch();
  }

  /** Shows the tank as the books have it now. */
  private look(): void {
    const tempC = this.plan.weather.tempC(this.timeH);
    const air = this.plan.weather.pco2AirUatm(this.timeH, tempC);
    this.view.read(this.books.tank, this.timeH, tempC, air);
  }

  private refuse(): never {
    const { view, plan } = this;
    const culprit = plan.channels.find(
      ({ process, settings }) => !Number.isFinite(process.rate(view, settings)),
    );
    throw new RangeError(
      `The run stopped at hour ${this.timeH.toFixed(2)} in the tank: ` +
        `${culprit ? `'${culprit.id}'` : 'the water'} gave a number that is not finite.`,
    );
  }

  private makePlant(): Plant {
    const { books, view } = this;
    const rowOf = (reason: string) => {
      const row = this.plan.ledger.findIndex(({ id }) => id === reason);
      return row >= 0 ? row : this.plan.ledger.length - 1;
    };
    const lime = books.poolIndex('reservoirLime');
    return {
      setLight: (level) => (view.light = level),
      waterKg: (vessel) => books.vessel(vessel)[WATER]!,
      contents: (vessel) => books.vessel(vessel),
      transfer: (reason, from, to, block: Block) =>
        books.transfer(rowOf(reason), books.offsetOf(from), books.offsetOf(to), block),
      addLime: (mol) =>
        books.shift(rowOf('refill'), books.offsetOf('outside') + indexOf.Ca, lime, mol),
      dissolveLime: (vessel, mol) =>
        books.shift(rowOf('refill'), lime, books.offsetOf(vessel) + indexOf.Ca, mol),
      limeMol: () => books.amounts[lime]!,
    };
  }
}
