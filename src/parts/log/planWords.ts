import type { Scenario } from '../../../shared/scenario/schema';
import { wordFor } from '../../../shared/scenario/words';

/** What a plan doses, in a line: "250 L; 1.2 g/L calcium hydroxide in the top-off, 4 L a day". */
export function dosingOf({ tank, topOff, evaporation, dosers, waterChanges }: Scenario): string {
  const litres = evaporation.mode === 'fixed' ? `, ${evaporation.litresPerDay} L a day` : '';
  const topped =
    topOff.reservoirL === 0
      ? 'no top-off'
      : topOff.additive === 'none'
        ? `plain water in the top-off${litres}`
        : `${topOff.gramsPerL} g/L ${wordFor(topOff.additive)} in the top-off${litres}`;
  return [
    `${tank.volumeL} L`,
    topped,
    ...dosers.map(({ name, mlPerDay }) => `${mlPerDay} mL ${name} a day`),
    ...(waterChanges.percent > 0
      ? [`${waterChanges.percent} % new water every ${waterChanges.everyDays} days`]
      : []),
  ].join('; ');
}
