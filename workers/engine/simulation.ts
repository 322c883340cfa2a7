import type { Device, Plant, VesselId } from '../../shared/devices/device';
import { indexOf, solutionKg, WATER, type Block } from '../../shared/species/block';
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
  private readonly topOffPipe: { readonly kgPerH: number };
  private nextEvent = 0;
  private switchAtH = 0;
  private tryH = 0.25;

  constructor(
    readonly plan: Plan,
    private readonly options: SimulationOptions = usualOptions,
  ) {
    this.books = plan.books;
    this.flows = new Flows(plan, this.books);
    this.step = new Step(plan.channels, this.flows, plan.weather, this.view);
    this.plant = this.makePlant();
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

  /** If a sensor was passed on the way, goes back and stops at it. */
  private shortenToSensor(first: number): number {
    let hours = first;
    for (let tries = 0; tries < 20; tries++) {
      const overshot = this.sensorOvershot();
      if (!overshot) return hours;
      const end = overshot.watch(this.view);
      this.look();
      const begin = overshot.watch(this.view);
      if (begin <= 0) return hours;
      hours *= begin / (begin - end);
      this.step.attempt(hours);
    }
    return hours;
  }

  private sensorOvershot(): Device | undefined {
    const slackL = this.view.volumeL * 1e-7;
    for (const device of this.plan.devices) {
      if (device.watch(this.view) < -slackL * Math.abs(device.watchPerL())) return device;
    }
    return undefined;
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

  private litresAfter(hours: number): number {
    const { saltKg, solutionKg } = this.flows.tankAfter(hours);
    return volumeL(saltKg, solutionKg, this.view.tempC);
  }

  /** Volume moves almost evenly between switches, so a sensor's moment can be aimed at. */
  private hoursUntilSensor(): number {
    const now = this.view.volumeL;
    let hours = Infinity;
    for (const device of this.plan.devices) {
      const perL = device.watchPerL();
      if (perL === 0) continue;
      const gap = device.watch(this.view);
      let aim = 0.5;
      for (let i = 0; i < 2; i++) {
        const fallPerH = (-perL * (this.litresAfter(aim) - now)) / aim;
        if (fallPerH <= 0) {
          aim = Infinity;
          break;
        }
        aim = gap / fallPerH;
      }
      hours = Math.min(hours, aim);
    }
    return Math.max(hours, SMALLEST_STEP_H);
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

export const vesselKg = (books: Books, vessel: VesselId): number =>
  solutionKg(books.amounts, books.offsetOf(vessel));
