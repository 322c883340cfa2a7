import type { Scenario } from '../scenario/schema';
import { limewaterDkhFromGPerL, limewaterSaturationGPerL } from '../seawater/limewater';
import type { Trace } from '../trace/trace';
import { highest, ledgerBetween, usePerDay } from './measures';

/** What keeps limewater from doing more. */
export type Binding = 'none' | 'strength' | 'evaporation' | 'saturation' | 'co2Supply';

export interface LimewaterCap {
  readonly binding: Binding;
  /** What limewater brought in a day of the trial, as a share of the first day's use. */
  readonly covered: number;
  /** Use on the first day: as alkalinity falls corals take less, which is no merit of the plan. */
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
  const useDkhPerDay = usePerDay(trace, 0, Math.min(24, hours));
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

/** What saturated limewater could do at this evaporation, beside what the tank uses. */
function mostSentence({ evaporation }: Scenario, cap: LimewaterCap): string {
  const litres = `${evaporation.litresPerDay} L a day of saturated limewater`;
  const rest = cap.useDkhPerDay - cap.saturatedDkhPerDay;
  return rest > 0
    ? `${litres} carry ${dkh(cap.saturatedDkhPerDay)} of the ${dkh(cap.useDkhPerDay)} dKH used in a day; the other ${dkh(rest)} need another source.`
    : `${litres} could carry ${dkh(cap.saturatedDkhPerDay)} dKH a day, and ${dkh(cap.useDkhPerDay)} are used.`;
}

/** The limit that binds, in a sentence. */
export function limewaterSentence(scenario: Scenario, cap: LimewaterCap): string {
  const { evaporation, limits, topOff } = scenario;
  const most = mostSentence(scenario, cap);
  switch (cap.binding) {
    case 'co2Supply':
      return `CO₂ supply binds limewater: the room’s air cannot feed this much hydroxide, and pH passes your ${limits.phHighNbs}. More aeration, or part of the dose as bicarbonate, lowers it.`;
    case 'saturation':
      return `Saturation binds limewater: water holds no more than ${dkh(cap.saturationGPerL)} g/L. ${most}`;
    case 'evaporation':
      return `Evaporation binds limewater. ${most}`;
    case 'strength':
      return `The strength of the mix binds limewater: it brings ${dkh(cap.broughtDkhPerDay)} dKH a day at ${topOff.gramsPerL} g/L. ${most}`;
    case 'none':
      return cap.covered > MORE_THAN_NEEDED
        ? `Limewater brings ${dkh(cap.broughtDkhPerDay)} dKH a day where ${dkh(cap.useDkhPerDay)} are used: mix it weaker.`
        : `Limewater carries the whole use: ${dkh(cap.broughtDkhPerDay)} dKH a day in ${evaporation.litresPerDay} L of top-off; nothing binds it yet.`;
  }
}
