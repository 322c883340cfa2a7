import type { Scenario } from '../scenario/schema';
import { limewaterDkhFromGPerL, limewaterSaturationGPerL } from '../seawater/limewater';
import { isExchange, type LedgerRow, type Trace } from '../trace/trace';
import { lineOf } from './lineResult';
import type { Outcome } from './outcome';
import { ledgerBetween, toppedOffLPerDay, usePerDay } from './measures';

/** What keeps limewater from doing more. */
export type Binding = 'none' | 'tooMuch' | 'strength' | 'evaporation' | 'saturation' | 'co2Supply';

export interface LimewaterCap {
  readonly binding: Binding;
  /** What limewater brought in a day of the trial, as a share of the first day's use. */
  readonly covered: number;
  /** Use on the first day: as alkalinity falls corals take less, which is no merit of the plan. */
  readonly useDkhPerDay: number;
  readonly broughtDkhPerDay: number;
  /** What everything else brought, less what was carried off, dKH/day. */
  readonly othersDkhPerDay: number;
  /** What saturated limewater could bring at this evaporation, dKH/day. */
  readonly saturatedDkhPerDay: number;
  readonly saturationGPerL: number;
  /** Strength at which limewater brings what the first day uses and nothing else brings, g/L. */
  readonly wantedGPerL: number;
  /** Top-off that went in, which is what evaporated. */
  readonly litresPerDay: number;
}

/** So near to the use counts as covering it. */
const NEARLY_ALL = 0.97;
const MORE_THAN_NEEDED = 1.06;

function bindingOf(
  { topOff, limits }: Scenario,
  cap: Omit<LimewaterCap, 'binding'>,
  peakPh: number,
): Binding {
  const all = cap.covered + cap.othersDkhPerDay / cap.useDkhPerDay;
  if (all > MORE_THAN_NEEDED) return 'tooMuch';
  if (peakPh > limits.phHighNbs) return 'co2Supply';
  if (cap.covered >= NEARLY_ALL) return 'none';
  if (topOff.gramsPerL > cap.saturationGPerL * 1.005 || topOff.settledG > 0) return 'saturation';
  return topOff.gramsPerL < cap.saturationGPerL * 0.97 ? 'strength' : 'evaporation';
}

/** As strong as this keeper's limewater gets, g/L. */
const saturationOf = ({ tank, topOff }: Scenario): number =>
  (limewaterSaturationGPerL(tank.tempC) * topOff.saturationPercent) / 100;

/** How far limewater carries this plan; undefined when it brings nothing or nothing is used. */
export function limewaterCap(
  scenario: Scenario,
  { trace, lines }: Pick<Outcome, 'trace' | 'lines'>,
): LimewaterCap | undefined {
  const { topOff, tank } = scenario;
  if (topOff.additive !== 'calciumHydroxide' || topOff.reservoirL === 0) return undefined;
  const hours = trace.rows - 1;
  const perDay = (isAsked: (row: LedgerRow) => boolean) =>
    trace.ledger
      .filter(isAsked)
      .reduce(
        (sum, { id }) => sum + (ledgerBetween(trace, id, 0, hours) * 24) / Math.max(1, hours),
        0,
      );
  const useDkhPerDay = usePerDay(trace, 0, Math.min(24, hours));
  const broughtDkhPerDay = perDay(({ role }) => role === 'topOff');
  if (broughtDkhPerDay < 0.005 || useDkhPerDay <= 0) return undefined;
  const litresPerDay = toppedOffLPerDay(trace);
  const saturationGPerL = saturationOf(scenario);
  const othersDkhPerDay = perDay(({ role }) => isExchange(role) && role !== 'topOff');
  const cap = {
    covered: broughtDkhPerDay / useDkhPerDay,
    ...{ useDkhPerDay, broughtDkhPerDay, othersDkhPerDay },
    wantedGPerL:
      (Math.min(topOff.gramsPerL, saturationGPerL) * Math.max(0, useDkhPerDay - othersDkhPerDay)) /
      broughtDkhPerDay,
    saturatedDkhPerDay: (litresPerDay * limewaterDkhFromGPerL(saturationGPerL)) / tank.volumeL,
    litresPerDay,
    saturationGPerL,
  };
  return { ...cap, binding: bindingOf(scenario, cap, lineOf(lines, 'phHigh').worst) };
}

/** Strength at which limewater would bring what the first day uses, up to saturation, g/L. */
export function limewaterStrengthFor(scenario: Scenario, trace: Trace): number {
  const dkhPerGPerL = (toppedOffLPerDay(trace) * limewaterDkhFromGPerL(1)) / scenario.tank.volumeL;
  if (dkhPerGPerL === 0) return 0;
  const useDkhPerDay = usePerDay(trace, 0, Math.min(24, trace.rows - 1));
  return Math.min(saturationOf(scenario), useDkhPerDay / dkhPerGPerL);
}
