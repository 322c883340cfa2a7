import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/drills';
import type { Scenario } from '../../../shared/scenario/schema';
import { lineOf } from '../../../shared/verdict/lineResult';
import { lastOf } from '../../../shared/verdict/measures';
import { usualHandAir } from '../../../shared/faults/handAir';
import type { ProtectionId } from '../../../shared/verdict/bought';
import { dumpAt } from './dump';
import { runDrill } from './drillRun';
import { limitMin, protectionPlans, switchL } from './protectionPlans';

/** One thing that could keep a stuck pump from doing harm, and what it would leave of it. */
export interface Layer {
  readonly title: string;
  readonly peakPh: number;
  readonly peakDkh: number;
  readonly litres: number;
}

type Change = (scenario: Scenario) => Scenario;

/** The same change that a protection makes, against a dump. */
const as =
  (id: ProtectionId): Change =>
  (scenario) =>
    protectionPlans[id].change(scenario, usualHandAir);

/** Each layer on its own against the same dump; the one that leaves least is first. */
export function layersOf(scenario: Scenario, hour: number): readonly Layer[] {
  const dump = dumpAt(scenario, hour);
  // With the pump held back the dump takes longer: all are followed for a day and a half.
  const asLong: Change = (plan) => ({
    ...plan,
    days: Math.max(plan.days, 1.5),
    faults: plan.faults.map((fault) => ({ ...fault, endsAfterH: 36 })),
  });
  const options: [string, Change][] = [
    [say.layers.nothing, (plan) => plan],
    [say.layers.secondSwitch(figure(switchL(scenario))), as('secondSwitch')],
    [say.layers.runLimit(figure(limitMin(scenario))), as('runLimit')],
    [say.layers.halfReservoir, as('halfReservoir')],
    [say.layers.halfStrength, as('halfStrength')],
    [say.layers.halfPump, as('halfPump')],
    [say.layers.plain, as('plain')],
  ];
  return options
    .map(([title, change]) => {
      const { trace, lines } = runDrill(change(asLong(dump)));
      return {
        title,
        peakPh: lineOf(lines, 'phHigh').worst,
        peakDkh: lineOf(lines, 'alkalinityHigh').worst,
        litres: lastOf(trace, 'topoff_l'),
      };
    })
    .sort((a, b) => a.peakPh - b.peakPh);
}
