import type { Scenario } from '../../../shared/scenario/schema';
import { wordFor } from '../../../shared/scenario/words';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';

const { dosing: told } = say;

/** What a plan doses, in a line: "250 L; 1.2 g/L calcium hydroxide in the top-off, 4 L a day". */
export function dosingOf({ tank, topOff, evaporation, dosers, waterChanges }: Scenario): string {
  const litres =
    evaporation.mode === 'fixed' ? told.litresADay(figure(evaporation.litresPerDay)) : '';
  const topped =
    topOff.reservoirL === 0
      ? told.noTopOff
      : topOff.additive === 'none'
        ? `${told.plainTopOff}${litres}`
        : `${told.topOff(figure(topOff.gramsPerL), wordFor(topOff.additive))}${litres}`;
  return [
    told.volume(figure(tank.volumeL)),
    topped,
    ...dosers.map(({ name, mlPerDay }) => told.doser(figure(mlPerDay), name)),
    ...(waterChanges.percent > 0
      ? [told.changes(figure(waterChanges.percent), waterChanges.everyDays)]
      : []),
  ].join('; ');
}
