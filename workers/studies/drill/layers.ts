import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/drills';
import type { Scenario } from '../../../shared/scenario/schema';
import { lineOf } from '../../../shared/verdict/lineResult';
import { lastOf } from '../../../shared/verdict/measures';
import { dumpAt } from './dump';
import { runDrill } from './drillRun';

/** One thing that could keep a stuck pump from doing harm, and what it would leave of it. */
export interface Layer {
  readonly title: string;
  readonly peakPh: number;
  readonly peakDkh: number;
  readonly litres: number;
}

/** Stand-ins for layers that the plan does not have: common practice. */
const SECOND_SWITCH_L = 2;
const RUN_LIMIT_MIN = 10;

type Change = (scenario: Scenario) => Scenario;

const topOffWith =
  (own: Partial<Scenario['topOff']>): Change =>
  (scenario) => ({ ...scenario, topOff: { ...scenario.topOff, ...own } });

const faultWith =
  (own: Partial<Scenario['faults'][number]>): Change =>
  (scenario) => ({ ...scenario, faults: scenario.faults.map((fault) => ({ ...fault, ...own })) });

/** Each layer on its own against the same dump; the one that leaves least is first. */
export function layersOf(scenario: Scenario, hour: number): readonly Layer[] {
  const { topOff } = scenario;
  const dump = dumpAt(scenario, hour);
  // With the pump held back the dump takes longer: all are followed for a day and a half.
  const asLong: Change = (plan) => ({
    ...plan,
    days: Math.max(plan.days, 1.5),
    faults: plan.faults.map((fault) => ({ ...fault, hours: 36 })),
  });
  const switchL = topOff.secondSwitchL || SECOND_SWITCH_L;
  const limitMin = topOff.runLimitMinPerH || RUN_LIMIT_MIN;
  const options: [string, Change][] = [
    [say.layers.nothing, (plan) => plan],
    [
      say.layers.secondSwitch(figure(switchL)),
      (plan) => faultWith({ secondSwitch: 'works' })(topOffWith({ secondSwitchL: switchL })(plan)),
    ],
    [
      say.layers.runLimit(figure(limitMin)),
      (plan) => faultWith({ runLimit: 'works' })(topOffWith({ runLimitMinPerH: limitMin })(plan)),
    ],
    [say.layers.halfReservoir, topOffWith({ reservoirL: topOff.reservoirL / 2 })],
    [say.layers.halfStrength, topOffWith({ gramsPerL: topOff.gramsPerL / 2 })],
    [say.layers.halfPump, topOffWith({ pumpLPerH: topOff.pumpLPerH / 2 })],
    [say.layers.plain, topOffWith({ additive: 'none' })],
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
