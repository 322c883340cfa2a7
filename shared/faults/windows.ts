import { INSTANT_H, momentH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { endOf } from './endOf';

/** Anything that holds over a stretch of a trial. */
type Timed = Scenario['faults'][number] | Scenario['responses'][number];

export interface Window<T> {
  readonly fromH: number;
  readonly toH: number;
  readonly what: T;
}

/** The stretches of a trial in which something of one kind holds. */
export class Windows<T extends Timed> {
  readonly all: readonly Window<T>[];

  constructor(things: readonly T[], kind: T['kind'], clockHour: number) {
    this.all = things
      .filter((thing) => thing.kind === kind)
      .map((what) => {
        const [fromH, toH] = [momentH(what, clockHour), endOf(what, clockHour)];
        return { fromH, toH, what };
      })
      .sort((a, b) => a.fromH - b.fromH);
  }

  /** What holds at a moment: of several, the one that began last. */
  at(timeH: number): T | undefined {
    if (this.all.length === 0) return undefined;
    return this.all.findLast(
      ({ fromH, toH }) => fromH <= timeH + INSTANT_H && timeH + INSTANT_H < toH,
    )?.what;
  }

  /** The next moment at which one begins or ends. */
  nextEdgeH(timeH: number): number {
    let next = Infinity;
    for (const { fromH, toH } of this.all) {
      if (fromH > timeH + INSTANT_H) next = Math.min(next, fromH);
      if (toH > timeH + INSTANT_H) next = Math.min(next, toH);
    }
    return next;
  }
}
