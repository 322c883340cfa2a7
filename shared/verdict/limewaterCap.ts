import type { Scenario } from '../scenario/schema';
import { limewaterDkhFromGPerL, limewaterSaturationGPerL } from '../seawater/limewater';
import type { Trace } from '../trace/trace';
import { highest, ledgerBetween, usePerDay } from './measures';

/** What keeps limewater from doing more. */
export type Binding = 'none' | 'strength' | 'evaporation' | 'saturation' | 'co2Supply';

export interface LimewaterCap {
  readonly binding: Binding;
  /** Share of the use that limewater brought over the trial. */
  readonly covered: number;
  readonly useDkhPerDay: number;
  readonly broughtDkhPerDay: number;
  /** What saturated limewater could bring at this evaporation, dKH/day. */
  readonly saturatedDkhPerDay: number;
  readonly saturationGPerL: number;
}

/** Less than this short of the use counts as covering it. */
const NEARLY_ALL = 0.97;
const MORE_THAN_NEEDED = 1.15;

function bindingOf(
  scenario: Scenario,
  cap: Omit<LimewaterCap, 'binding'>,
  peakPh: number,
): Binding {
  const { topOff, limits } = scenario;
  if (cap.covered > MORE_THAN_NEEDED) return 'none';
  if (peakPh > limits.phHighNbs) return 'co2Supply';
  if (cap.covered >= NEARLY_ALL) return 'none';
  if (topOff.gramsPerL > cap.saturationGPerL * 1.005 || topOff.settledG > 0) return 'saturation';
  return topOff.gramsPerL < cap.saturationGPerL * 0.97 ? 'strength' : 'evaporation';
}

/** How far limewater carries this plan; undefined when the plan uses none. */
export function limewaterCap(scenario: Scenario, trace: Trace): LimewaterCap | undefined {
  const { topOff, tank, evaporation } = scenario;
  if (topOff.additive !== 'calciumHydroxide' || topOff.reservoirL === 0) return undefined;
  const hours = trace.rows - 1;
  const saturationGPerL = (limewaterSaturationGPerL(tank.tempC) * topOff.saturationPercent) / 100;
  const useDkhPerDay = usePerDay(trace, 0, hours);
  const broughtDkhPerDay = (ledgerBetween(trace, 'topOff', 0, hours) * 24) / Math.max(1, hours);
  const cap = {
    covered: useDkhPerDay > 0 ? broughtDkhPerDay / useDkhPerDay : 1,
    useDkhPerDay,
    broughtDkhPerDay,
    saturatedDkhPerDay:
      (evaporation.litresPerDay * limewaterDkhFromGPerL(saturationGPerL)) / tank.volumeL,
    saturationGPerL,
  };
  return { ...cap, binding: bindingOf(scenario, cap, highest(trace, 'ph_nbs').value) };
}

const dkh = (value: number) => value.toFixed(2);

/** The limit that binds, in a sentence. */
export function limewaterSentence(scenario: Scenario, cap: LimewaterCap): string {
  const { evaporation, limits } = scenario;
  const use = dkh(cap.useDkhPerDay);
  const litres = evaporation.litresPerDay;
  const rest = dkh(Math.max(0, cap.useDkhPerDay - cap.saturatedDkhPerDay));
  const most = `${litres} L a day of saturated limewater carry ${dkh(cap.saturatedDkhPerDay)} of the ${use} dKH used in a day`;
  switch (cap.binding) {
    case 'co2Supply':
      return `CO₂ supply binds limewater: the room’s air cannot feed this much hydroxide, and pH passes your ${limits.phHighNbs}. More aeration, or part of the dose as bicarbonate, lowers it.`;
    case 'saturation':
      return `Saturation binds limewater: water holds no more than ${dkh(cap.saturationGPerL)} g/L, and ${most}; the other ${rest} need another source.`;
    case 'evaporation':
      return `Evaporation binds limewater: ${most}; the other ${rest} need another source.`;
    case 'strength':
      return `The mix itself binds: stirred up to saturation (${dkh(cap.saturationGPerL)} g/L), ${most}.`;
    case 'none':
      if (cap.covered > MORE_THAN_NEEDED) {
        return `Limewater brings ${dkh(cap.broughtDkhPerDay)} dKH a day where ${use} are used: mix it weaker.`;
      }
      return `Limewater carries the whole use: ${dkh(cap.broughtDkhPerDay)} dKH a day in ${litres} L of top-off; nothing binds it yet.`;
  }
}
