import { say } from '../words/ledger';
import { momentH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { indexOf } from '../species/block';
import { pureWater } from '../water/mixWater';
import { inOrder, type EventKind, type TankEvent } from './event';

const CO2_G_PER_MOL = molarMassGPerMol({ C: 1, O: 2 });
/** Strongly carbonated plain water (common practice, no source). */
export const CO2_G_PER_L = 6;

function portionsOf(
  { co2GramsEach, portions, ...when }: Scenario['responses'][number],
  { start, tank }: Scenario,
): TankEvent[] {
  const portion = pureWater(co2GramsEach / CO2_G_PER_L, tank.tempC);
  portion[indexOf.DIC] = co2GramsEach / CO2_G_PER_MOL;
  return Array.from({ length: Math.round(portions) }, (_, i) => ({
    timeH: momentH(when, start.clockHour) + i,
    apply: (_view, plant) => plant.transfer('carbonatedWater', 'outside', 'tank', portion),
  }));
}

/** Carbon dioxide at once, in portions an hour apart: there is time to measure between them. */
export const carbonatedWater: EventKind = {
  id: 'carbonatedWater',
  label: say.carbonatedWater,
  role: 'byHand',
  occurrences: (scenario) =>
    inOrder(
      scenario.responses
        .filter(({ kind, co2GramsEach }) => kind === 'carbonatedWater' && co2GramsEach > 0)
        .flatMap((response) => portionsOf(response, scenario)),
      scenario,
    ),
};
