import { sentence } from '../../shared/scenario/sentence';
import type { Scenario } from '../../shared/scenario/schema';
import { sampleFactors } from '../../shared/units/sampleFactors';
import { usualOptions, type SimulationOptions } from './simulation';

/**
 * The usual options with the scenario's expressions of time, sampled for so many days: a run knows
 * only tables. Rejects with a RangeError, a sentence an expression, when one cannot be read.
 */
export async function sampledOptions(
  scenario: Scenario,
  days = scenario.days,
): Promise<SimulationOptions> {
  const sampled = await sampleFactors({ ...scenario, days });
  if (!sampled.ok) throw new RangeError(sampled.problems.map(sentence).join(' '));
  return { ...usualOptions, factors: sampled.factors };
}
