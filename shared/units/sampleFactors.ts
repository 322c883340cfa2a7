import { say } from '../words/problems';
import type { Factors } from '../scenario/factors';
import type { Problem } from '../scenario/problem';
import type { Scenario } from '../scenario/schema';
import { factorTable } from './factorTable';

export type SampledFactors =
  | { readonly ok: true; readonly factors: Factors }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Where expressions of time stand in a scenario. */
const places = [
  { path: 'evaporation.factor', key: 'evaporation', of: (s: Scenario) => s.evaporation.factor },
  { path: 'room.co2Factor', key: 'roomCo2', of: (s: Scenario) => s.room.co2Factor },
] as const;

/** Samples every expression of a scenario, or says of each what is wrong with it. */
export async function sampleFactors(scenario: Scenario): Promise<SampledFactors> {
  const factors: Partial<Record<keyof Factors, Float64Array>> = {};
  const problems: Problem[] = [];
  for (const { path, key, of } of places) {
    const text = of(scenario);
    const sampled = await factorTable(text, scenario.days, scenario.start.clockHour);
    if (!sampled.ok) {
      const { message, at } = sampled.problem;
      problems.push({
        path,
        what: say.expression.what,
        got: say.expression.wrongAt(text, String(at + 1)),
        expected: say.expression.expected,
        wayOut: message,
      });
    } else if (sampled.table) factors[key] = sampled.table;
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, factors };
}
