import { figure } from '../../shared/words/figure';
import { bottleDumps } from '../../shared/recipe/bottleDump';
import { say } from '../../shared/words/card';
import type { Scenario } from '../../shared/scenario/schema';

const { stops, cautions } = say;

/** When to stop, drawn from this tank's own limits and no others. */
export function stopRules(scenario: Scenario): string[] {
  const { limits, topOff, dosers } = scenario;
  const low = figure(limits.alkalinityLowDkh);
  const high = figure(limits.alkalinityHighDkh);
  const salinity = [limits.salinityLowPractical, limits.salinityHighPractical] as const;
  return [
    stops.tooHigh(high, figure(limits.phHighNbs)),
    stops.tooLow(low),
    stops.tooFast(figure(limits.alkalinityChangeDkhPerDay)),
    stops.salinity(figure(salinity[0]), figure(salinity[1])),
    ...(topOff.reservoirL === 0 ? [] : [stops.topOff]),
    ...(dosers.length > 0 ? [stops.doser, stops.bottles] : []),
    ...bottleDumps(scenario).map(({ fillL, minutes }) =>
      stops.bottle(String(Math.floor(fillL * 1000)), String(Math.floor(minutes)), high),
    ),
    stops.floor,
  ];
}

/** Everything that a plan dissolves somewhere. */
const dissolvedIn = ({ topOff, dosers }: Scenario): readonly string[] => [
  topOff.additive,
  ...dosers.flatMap(({ recipe }) => recipe.map(({ additive }) => additive)),
];

/** What can hurt somebody in this plan, wherever it is dissolved. */
export function cardCautions(scenario: Scenario): string[] {
  const used = dissolvedIn(scenario);
  const uses = (...names: string[]) => names.some((name) => used.includes(name));
  return [
    ...(uses('calciumHydroxide') ? [cautions.lime] : []),
    ...(uses('sodiumCarbonate', 'calciumChloride', 'calciumChlorideDihydrate')
      ? [cautions.soda]
      : []),
    ...(uses('sodiumHydroxide') ? [cautions.lye] : []),
    cautions.mains,
    cautions.sheets,
  ];
}
