import type { Scenario } from '../../shared/scenario/schema';
import { sampleFactors } from '../../shared/units/sampleFactors';
import { usualOptions, type SimulationOptions } from './simulation';
import { UnreadExpressions } from './unreadExpressions';

/**
 * The usual options with the scenario's expressions of time, sampled for so many days: a run knows
 * only tables. Rejects with UnreadExpressions, a RangeError, when one cannot be read.
 */
export async function sampledOptions(
  scenario: Scenario,
  days = scenario.days,
): Promise<SimulationOptions> {
  const sampled = await sampleFactors({ ...scenario, days });
  if (!sampled.ok) throw new UnreadExpressions(sampled.wrong);
  return { ...usualOptions, factors: sampled.factors };
}
