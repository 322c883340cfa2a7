import { newFault } from '../scenario/newFault';
import type { Scenario } from '../scenario/schema';

type Fault = Scenario['faults'][number];

/** In the night, when oxygen and pH are low and nobody looks. */
const NIGHT = { day: 2, hour: 2 };
/** Nobody comes for so long, h; the mains may stay away for a day (common practice). */
const UNNOTICED_H = 48;
const WITHOUT_MAINS_H = 24;
/** A heater that fails may warm or cool by so much, °C (common practice). */
const COLD_C = 6;
const HOT_C = 5.5;

/** The failures that a tank as it runs can have, each with usual values; one of each kind of harm. */
export function possibleFaults({ tank, topOff, dosers, waterChanges }: Scenario): Fault[] {
  const fault = (kind: Fault['kind'], own: Partial<Fault> = {}) =>
    newFault(kind, { ...NIGHT, endsAfterH: UNNOTICED_H, ...own });
  const within = (tempC: number) => Math.max(10, Math.min(38, tempC));
  const hasTopOff = topOff.reservoirL > 0;
  const carries = hasTopOff && topOff.additive !== 'none';
  return [
    fault('powerCut', { endsAfterH: WITHOUT_MAINS_H }),
    ...(hasTopOff ? [fault('topOffOn'), fault('siphon'), fault('topOffOff')] : []),
    ...(carries ? [fault('strongMix')] : []),
    ...(carries && topOff.additive === 'calciumHydroxide' ? [fault('slurry')] : []),
    ...(dosers.length > 0 ? [fault('doserOn'), fault('doserOff')] : []),
    fault('heater', { endTempC: within(tank.tempC + HOT_C) }),
    fault('heater', { endTempC: within(tank.tempC - COLD_C) }),
    ...(waterChanges.percent > 0 ? [fault('wrongNewWater')] : []),
    fault('roomCo2'),
  ];
}
