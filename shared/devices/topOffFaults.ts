import { Windows } from '../faults/windows';
import type { Scenario } from '../scenario/schema';

/** What is wrong with the top-off at a moment. */
export interface TopOffFault {
  readonly powered: boolean;
  /** The pump runs whatever the level switch says. */
  readonly stuckOn: boolean;
  /** Nothing comes: the pump stands, and nobody refills. */
  readonly empty: boolean;
  readonly sensorLowL: number;
  readonly passesSecondSwitch: boolean;
  readonly passesRunLimit: boolean;
  /** Undefined when nothing siphons but what the plan itself says. */
  readonly siphonLPerH: number | undefined;
}

/** What most trials have at every moment. */
const NOTHING: TopOffFault = {
  ...{ powered: true, stuckOn: false, empty: false, sensorLowL: 0 },
  ...{ passesSecondSwitch: false, passesRunLimit: false, siphonLPerH: undefined },
};

const kinds = ['topOffOn', 'topOffOff', 'sensorLow', 'siphon', 'powerCut'] as const;

/** The faults of a top-off's pump, switches and hose, by the clock. */
export class TopOffFaults {
  private readonly windows;
  /** Whether any of them ever comes. */
  private readonly any: boolean;

  constructor({ faults, start: { clockHour } }: Scenario) {
    const [on, off, sensor, siphon, cut] = kinds.map((k) => new Windows(faults, k, clockHour));
    this.any = [on, off, sensor, siphon, cut].some((windows) => windows!.all.length > 0);
    this.windows = { on: on!, off: off!, sensor: sensor!, siphon: siphon!, cut: cut! };
  }

  at(timeH: number): TopOffFault {
    if (!this.any) return NOTHING;
    const { on, off, sensor, siphon, cut } = this.windows;
    const stuck = on.at(timeH);
    const empty = off.at(timeH) !== undefined;
    return {
      powered: !cut.at(timeH) && !empty,
      stuckOn: stuck !== undefined,
      empty,
      sensorLowL: sensor.at(timeH)?.sensorLowL ?? 0,
      passesSecondSwitch: stuck?.secondSwitch === 'fails',
      passesRunLimit: stuck?.runLimit === 'fails',
      siphonLPerH: siphon.at(timeH)?.litresPerH,
    };
  }

  nextEdgeH(timeH: number): number {
    if (!this.any) return Infinity;
    return Math.min(...Object.values(this.windows).map((windows) => windows.nextEdgeH(timeH)));
  }
}
