import { passive, type Device } from '../../shared/devices/device';
import { WATER, type Block } from '../../shared/species/block';
import type { Step } from './step';
import { volumeL, type TankView } from './tankView';

/** A step is aimed a hair beyond a sensor's mark, so that it is sure to pass it. */
export const AIM_BEYOND_H = 0.2 / 3600;
const SMALLEST_AIM_H = 1e-6;

/** Finds when a device's sensor will reach, or has passed, its mark. */
export class Sensors {
  /** How far each device's sensor was from its mark when the step began. */
  private readonly gaps: number[] = [];

  /** Those that watch anything. */
  private readonly devices: readonly Device[];

  constructor(
    devices: readonly Device[],
    private readonly view: TankView,
    private readonly step: Step,
  ) {
    this.devices = devices.filter(({ watch }) => watch !== passive.watch);
  }

  /** Volume moves almost evenly between switches, so a sensor's moment can be aimed at. */
  hoursUntilReached(): number {
    const { saltKgPerH, slope } = this.step.begins;
    let hours = Infinity;
    for (let i = 0; i < this.devices.length; i++) {
      const device = this.devices[i]!;
      const gap = device.watch(this.view);
      this.gaps[i] = gap;
      const perL = device.watchPerL();
      if (perL !== 0) hours = Math.min(hours, this.hoursToClose(gap, -perL, saltKgPerH, slope));
    }
    return Math.max(hours, SMALLEST_AIM_H);
  }

  /** The part of the step just tried at which the first sensor was passed; 1 when none was. */
  partPassed(): number {
    let part = 1;
    for (let i = 0; i < this.devices.length; i++) {
      const end = this.devices[i]!.watch(this.view);
      const begin = this.gaps[i]!;
      if (end >= 0 || begin <= 0) continue;
      part = Math.min(part, begin / (begin - end));
    }
    return part;
  }

  reached(): boolean {
    for (let i = 0; i < this.devices.length; i++) {
      if (this.devices[i]!.watch(this.view) <= 0) return true;
    }
    return false;
  }

  /** Hours until a gap closes; two looks ahead, since volume is not quite straight in time. */
  private hoursToClose(gap: number, perL: number, saltKgPerH: number, slope: Block): number {
    let aim = 0.5;
    for (let i = 0; i < 2; i++) {
      const litres = this.litresAfter(aim, saltKgPerH, slope[WATER]!) - this.view.volumeL;
      if (litres * perL <= 0) return Infinity;
      aim = (gap * aim) / (litres * perL);
      // Farther than any step goes; and far enough ahead, the straight line has no salt left.
      if (!(aim < 24)) return Infinity;
    }
    return aim + AIM_BEYOND_H;
  }

  /** The tank's volume after so many hours, if everything goes on as it goes now. */
  private litresAfter(hours: number, saltKgPerH: number, waterKgPerH: number): number {
    const { view } = this;
    const salt = view.saltKg + hours * saltKgPerH;
    const solution = view.solutionKg + hours * (saltKgPerH + waterKgPerH);
    return volumeL(salt, solution, view.tempC);
  }
}
