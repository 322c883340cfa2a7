import type { Scenario } from '../scenario/schema';
import { limewaterDkhFromGPerL, limewaterSaturationGPerL } from '../seawater/limewater';
import { isExchange, readColumn, type LedgerRow, type Trace } from '../trace/trace';
import { lineOf } from './lineResult';
import type { Outcome } from './outcome';
import { lastOf, rowsBetween, toppedOffLPerDay, usePerDay } from './measures';

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
export const NEARLY_ALL = 0.97;
const MORE_THAN_NEEDED = 1.06;

function bindingOf(
  { topOff, limits }: Scenario,
  cap: Omit<LimewaterCap, 'binding'>,
  peakPh: number,
  climbs: boolean,
): Binding {
  const all = cap.covered + cap.othersDkhPerDay / cap.useDkhPerDay;
  if (all > MORE_THAN_NEEDED && climbs) return 'tooMuch';
  if (peakPh > limits.phHighNbs) return 'co2Supply';
  if (cap.covered >= NEARLY_ALL) return 'none';
  if (topOff.gramsPerL > cap.saturationGPerL * 1.005 || topOff.settledG > 0) return 'saturation';
  if (topOff.gramsPerL >= cap.saturationGPerL * 0.97) return 'evaporation';
  return all >= NEARLY_ALL ? 'none' : 'strength';
}

/**
 * Whether more than is used still goes in at the end, out of the upper half of the band. What raises a
 * low tank brings more than its first day uses, and so does what is poured in on some mornings: neither
 * is too much.
 */
function climbsAway({ limits }: Scenario, trace: Trace): boolean {
  const { alkalinityLowDkh: low, alkalinityHighDkh: high } = limits;
  const hours = trace.rows - 1;
  const fromH = Math.max(0, hours - LAST_H);
  const endDkh = lastOf(trace, 'alkalinity_dkh');
  const begins = readColumn(trace, 'alkalinity_dkh')[fromH]!;
  if (endDkh <= (low + high) / 2 || endDkh <= begins) return false;
  const dosed = rowsBetween(trace, isDosed, fromH, hours);
  return (
    (dosed * 24) / Math.max(1, hours - fromH) > MORE_THAN_NEEDED * usePerDay(trace, fromH, hours)
  );
}
/** A day's swing and a gulp of the top-off are even over it. */
const LAST_H = 48;
const isDosed = ({ role }: LedgerRow): boolean => isExchange(role) && role !== 'byHand';

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
    (rowsBetween(trace, isAsked, 0, hours) * 24) / Math.max(1, hours);
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
  const peakPh = lineOf(lines, 'phHigh').worst;
  return { ...cap, binding: bindingOf(scenario, cap, peakPh, climbsAway(scenario, trace)) };
}

/** Strength at which limewater would bring what the first day uses, up to saturation, g/L. */
export function limewaterStrengthFor(scenario: Scenario, trace: Trace): number {
  const dkhPerGPerL = (toppedOffLPerDay(trace) * limewaterDkhFromGPerL(1)) / scenario.tank.volumeL;
  if (dkhPerGPerL === 0) return 0;
  const useDkhPerDay = usePerDay(trace, 0, Math.min(24, trace.rows - 1));
  return Math.min(saturationOf(scenario), useDkhPerDay / dkhPerGPerL);
}
