import type { Factors } from '../scenario/factors';
import type { Scenario } from '../scenario/schema';
import type { WrongExpression } from './expressionProblem';
import { factorTable } from './factorTable';

export type SampledFactors =
  | { readonly ok: true; readonly factors: Factors }
  | { readonly ok: false; readonly wrong: readonly WrongExpression[] };

/** Where expressions of time stand in a scenario. */
const places = [
  { path: 'evaporation.factor', key: 'evaporation', of: (s: Scenario) => s.evaporation.factor },
  { path: 'room.co2Factor', key: 'roomCo2', of: (s: Scenario) => s.room.co2Factor },
] as const;

/** Samples every expression of a scenario, or says of each what is wrong with it. */
export async function sampleFactors(scenario: Scenario): Promise<SampledFactors> {
  const factors: Partial<Record<keyof Factors, Float64Array>> = {};
  const wrong: WrongExpression[] = [];
  for (const { path, key, of } of places) {
    const text = of(scenario);
    const sampled = await factorTable(text, scenario.days, scenario.start.clockHour);
    if (!sampled.ok) wrong.push({ path, text, problem: sampled.problem });
    else if (sampled.table) factors[key] = sampled.table;
  }
  return wrong.length > 0 ? { ok: false, wrong } : { ok: true, factors };
}
