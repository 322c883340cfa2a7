import type { Scenario } from '../scenario/schema';
import { toppedOffLPerDay } from './measures';
import { baggedSaltGrams } from '../recipe/gramsFor';
import { readColumn, type Trace } from '../trace/trace';

/** What the plan uses up. */
export interface Supplies {
  /** Days that a full reservoir lasts; undefined without top-off. */
  readonly reservoirDays: number | undefined;
  readonly calciumHydroxideGPerMonth: number;
  readonly saltKgPerMonth: number;
}

const DAYS_A_MONTH = 30;

/** Salt mix for all new water that a plan changes, g a day. */
export function saltGPerDay({ waterChanges, tank }: Scenario): number {
  const { percent, everyDays, continuousLPerDay, salinityPractical, newWaterTempC } = waterChanges;
  const changedL = percent > 0 ? ((percent / 100) * tank.volumeL) / everyDays : 0;
  return baggedSaltGrams(changedL + continuousLPerDay, salinityPractical, newWaterTempC);
}

export function suppliesOf(scenario: Scenario, trace: Trace): Supplies {
  const { topOff } = scenario;
  const litresPerDay = toppedOffLPerDay(trace);
  return {
    reservoirDays: litresPerDay > 0 ? topOff.reservoirL / litresPerDay : undefined,
    calciumHydroxideGPerMonth:
      topOff.additive === 'calciumHydroxide' ? litresPerDay * topOff.gramsPerL * DAYS_A_MONTH : 0,
    saltKgPerMonth: (DAYS_A_MONTH * saltGPerDay(scenario)) / 1000,
  };
}

/** A reservoir that stands empty in a trial. */
export interface DryReservoir {
  readonly firstH: number;
  readonly hours: number;
  /** Whole days that a full one lasts. */
  readonly lastsDays: number;
}

export function dryReservoir({ topOff }: Scenario, trace: Trace): DryReservoir | undefined {
  if (topOff.reservoirL === 0) return undefined;
  const litres = readColumn(trace, 'reservoir_l');
  const firstH = litres.findIndex((value) => value <= 1e-9);
  if (firstH < 0) return undefined;
  const hours = litres.filter((value) => value <= 1e-9).length;
  // Later a refill also makes up for what was missing meanwhile.
  const litresPerDay = (readColumn(trace, 'topoff_l')[firstH]! * 24) / Math.max(1, firstH);
  return { firstH, hours, lastsDays: Math.floor(topOff.reservoirL / Math.max(1e-6, litresPerDay)) };
}
