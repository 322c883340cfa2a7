import type { Scenario } from '../../../shared/scenario/schema';
import { lineOf } from '../../../shared/verdict/lineResult';
import { lastOf } from '../../../shared/verdict/measures';
import { usualHandAir } from '../../../shared/faults/handAir';
import { dumpAt } from './dump';
import { runDrill } from './drillRun';
import { limitMin, protectionPlans, switchL } from './protectionPlans';

/** What could keep a stuck pump from doing harm, with what it is set to. */
export type Stop =
  | { readonly id: 'secondSwitch'; readonly aboveLevelL: number }
  | { readonly id: 'runLimit'; readonly minPerH: number }
  | { readonly id: 'nothing' | 'halfReservoir' | 'halfStrength' | 'halfPump' | 'plain' };

/** One of them, and what it would leave of the harm. */
export interface Layer {
  readonly stop: Stop;
  readonly peakPh: number;
  readonly peakDkh: number;
  readonly litres: number;
}

type Change = (scenario: Scenario) => Scenario;

/** The same change that a protection makes, against a dump. */
const withStop =
  (id: Stop['id']): Change =>
  (scenario) =>
    id === 'nothing' ? scenario : protectionPlans[id].change(scenario, usualHandAir);

/** Each layer on its own against the same dump; the one that leaves least is first. */
export function layersOf(scenario: Scenario, hour: number): readonly Layer[] {
  const dump = dumpAt(scenario, hour);
  // With the pump held back the dump takes longer: all are followed for a day and a half.
  const asLong: Change = (plan) => ({
    ...plan,
    days: Math.max(plan.days, 1.5),
    faults: plan.faults.map((fault) => ({ ...fault, endsAfterH: 36 })),
  });
  const stops: readonly Stop[] = [
    { id: 'nothing' },
    { id: 'secondSwitch', aboveLevelL: switchL(scenario) },
    { id: 'runLimit', minPerH: limitMin(scenario) },
    { id: 'halfReservoir' },
    { id: 'halfStrength' },
    { id: 'halfPump' },
    { id: 'plain' },
  ];
  return stops
    .map((stop) => {
      const { trace, lines } = runDrill(withStop(stop.id)(asLong(dump)));
      return {
        stop,
        peakPh: lineOf(lines, 'phHigh').worst,
        peakDkh: lineOf(lines, 'alkalinityHigh').worst,
        litres: lastOf(trace, 'topoff_l'),
      };
    })
    .sort((a, b) => a.peakPh - b.peakPh);
}
