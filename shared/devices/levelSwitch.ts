import type { Scenario } from '../scenario/schema';
import type { TopOffFault } from './topOffFaults';

/**
 * The level sensor that calls for water, and a second switch above it that forbids it. Each gives
 * way again only when the level has fallen by the dead band.
 */
export class LevelSwitch {
  private readonly fullL: number;
  private readonly bandL: number;
  private readonly cutOffL: number;
  readonly memory = { wanted: false, tripped: false };
  private fault: Pick<TopOffFault, 'stuckOn' | 'sensorLowL' | 'passesSecondSwitch'> = {
    ...{ stuckOn: false, sensorLowL: 0, passesSecondSwitch: false },
  };

  constructor({ tank, topOff }: Scenario) {
    this.fullL = tank.volumeL;
    this.bandL = topOff.deadBandL;
    this.cutOffL = topOff.secondSwitchL > 0 ? tank.volumeL + topOff.secondSwitchL : Infinity;
  }

  private get cutOffWorks(): boolean {
    return !this.fault.passesSecondSwitch && this.cutOffL < Infinity;
  }

  private firstSignal(volumeL: number): number {
    if (this.fault.stuckOn) return Infinity;
    const seenL = volumeL - this.fault.sensorLowL;
    return this.memory.wanted ? this.fullL - seenL : seenL - (this.fullL - this.bandL);
  }

  private secondSignal(volumeL: number): number {
    if (!this.cutOffWorks) return Infinity;
    return this.memory.tripped ? volumeL - (this.cutOffL - this.bandL) : this.cutOffL - volumeL;
  }

  /** Falls to nothing at the level, L, at which the nearer of the two switches. */
  signal(volumeL: number): number {
    this.secondIsNext = this.secondSignal(volumeL) < this.firstSignal(volumeL);
    return this.secondIsNext ? this.secondSignal(volumeL) : this.firstSignal(volumeL);
  }

  private secondIsNext = false;

  /** How that signal moves with each litre in the tank. */
  signalPerL(): number {
    if (this.secondIsNext) return this.memory.tripped ? 1 : -1;
    return this.memory.wanted ? -1 : 1;
  }

  /** Switches what is due at this level. */
  look(volumeL: number, fault: TopOffFault): void {
    this.fault = fault;
    const seenL = volumeL - fault.sensorLowL;
    if (fault.stuckOn) this.memory.wanted = seenL < this.fullL;
    else if (this.firstSignal(volumeL) <= 0) this.memory.wanted = !this.memory.wanted;
    if (this.secondSignal(volumeL) <= 0) this.memory.tripped = !this.memory.tripped;
  }

  /** Whether the pump is told to run. */
  get calls(): boolean {
    return (this.memory.wanted || this.fault.stuckOn) && !(this.cutOffWorks && this.memory.tripped);
  }
}
