import { nextDailyTimeH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { Windows } from '../faults/windows';
import { passive, type DeviceKind } from './device';

interface Stretch {
  /** Hour of the day, from lights-on, at which it begins. */
  readonly fromH: number;
  readonly level: number;
  readonly slopePerH: number;
}

/**
 * The light of a day as straight stretches: dark, dawn, full, dusk. Whatever the ramps, its sum
 * over the day is that of full light for the stated hours.
 */
export function stretchesOf({ hours, rampHours }: Scenario['lights']): Stretch[] {
  if (hours === 0) return [{ fromH: 0, level: 0, slopePerH: 0 }];
  const ramp = Math.min(rampHours, hours / 2);
  const full = hours / (hours - ramp);
  const dark = hours < 24 ? [{ fromH: hours, level: 0, slopePerH: 0 }] : [];
  if (ramp === 0) return [{ fromH: 0, level: 1, slopePerH: 0 }, ...dark];
  return [
    { fromH: 0, level: 0, slopePerH: full / ramp },
    { fromH: ramp, level: full, slopePerH: 0 },
    { fromH: hours - ramp, level: full, slopePerH: -full / ramp },
    ...dark,
  ];
}

/** Lights by the clock, with a dawn and a dusk if wanted. */
export const lights: DeviceKind = {
  id: 'lights',
  build({ lights: settings, faults, start: { clockHour } }) {
    const cuts = new Windows(faults, 'powerCut', clockHour);
    const stretches = stretchesOf(settings);
    const clockOf = ({ fromH }: Stretch) => (settings.onHour + fromH) % 24;
    const phaseH = (timeH: number) =>
      (((timeH + clockHour - settings.onHour) % 24) + 24 + 1e-9) % 24;
    return [
      {
        ...passive,
        id: 'lights',
        nextClockH: (timeH) =>
          Math.min(
            cuts.nextEdgeH(timeH),
            ...(stretches.length === 1
              ? []
              : stretches.map((s) => nextDailyTimeH(timeH, clockOf(s), clockHour))),
          ),
        act(view, plant) {
          if (cuts.at(view.timeH)) {
            plant.setLight(0, 0);
            return;
          }
          const phase = phaseH(view.timeH);
          const now = stretches.filter(({ fromH }) => fromH <= phase).at(-1) ?? stretches[0]!;
          const level = now.level + now.slopePerH * (phase - now.fromH);
          plant.setLight(Math.max(0, level), now.slopePerH);
        },
      },
    ];
  },
};
