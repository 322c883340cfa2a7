import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/card';
import type { Scenario } from '../../../shared/scenario/schema';

const { stops, cautions } = say;

/** When to stop, drawn from this tank's own limits and no others. */
export function stopRules({ limits, topOff, dosers }: Scenario): string[] {
  const low = figure(limits.alkalinityLowDkh);
  const high = figure(limits.alkalinityHighDkh);
  const salinity = [limits.salinityLowPractical, limits.salinityHighPractical] as const;
  return [
    stops.tooHigh(high, figure(limits.phHighNbs)),
    stops.tooLow(low),
    stops.tooFast(figure(limits.alkalinityChangeDkhPerDay)),
    stops.salinity(figure(salinity[0]), figure(salinity[1])),
    ...(topOff.additive === 'none' ? [] : [stops.topOff]),
    ...(dosers.length > 0 ? [stops.bottles] : []),
  ];
}

/** What can hurt somebody in this plan. */
export function cardCautions({ topOff, dosers }: Scenario): string[] {
  const lime = topOff.additive === 'calciumHydroxide';
  const soda = dosers.some(({ recipe }) =>
    recipe.some(({ additive }) => additive === 'sodiumCarbonate'),
  );
  return [
    ...(lime ? [cautions.lime] : []),
    ...(soda ? [cautions.soda] : []),
    cautions.mains,
    cautions.sheets,
  ];
}
