import type { Device, Plant } from '../../shared/devices/device';
import { INSTANT_H } from '../../shared/scenario/clock';
import type { TankView } from './tankView';

/** Who acts next, and when: each device by its own clock, or when its sensor has reached its mark. */
export class Agenda {
  /** The next moment at which any of them acts by the clock. */
  nextH = -Infinity;
  private readonly dueH: Float64Array;

  constructor(
    private readonly devices: readonly Device[],
    private readonly view: TankView,
    readonly plant: Plant,
  ) {
    this.dueH = new Float64Array(devices.length);
  }

  /** Every device looks and acts: something has happened that any of them may answer. */
  actAll(timeH: number): void {
    for (let i = 0; i < this.devices.length; i++) this.actOne(i, timeH);
    this.findNext();
  }

  /** Those act whose moment has come, or whose sensor calls. */
  actDue(timeH: number): void {
    const { devices, dueH, view } = this;
    for (let i = 0; i < devices.length; i++) {
      if (timeH >= dueH[i]! - INSTANT_H || devices[i]!.watch(view) <= 0) this.actOne(i, timeH);
    }
    this.findNext();
  }

  private actOne(i: number, timeH: number): void {
    const device = this.devices[i]!;
    device.act(this.view, this.plant);
    this.dueH[i] = device.nextClockH(timeH);
  }

  private findNext(): void {
    let next = Infinity;
    for (let i = 0; i < this.dueH.length; i++) next = Math.min(next, this.dueH[i]!);
    this.nextH = next;
  }
}
