import type { Scenario } from '../../../shared/scenario/schema';
import { usualSpreads } from '../../../shared/verdict/spreads';
import type { SimulationOptions } from '../../engine/simulation';
import { summaryOf, type EnsembleSummary } from './ensembleSummary';
import { memberOptions, runMember } from './memberResult';

/** So many tanks that might be this one, with the usual spreads, run and summed up. */
export function ensembleOf(
  scenario: Scenario,
  members: number,
  seed: number,
  options: SimulationOptions,
): EnsembleSummary {
  const ownOptions = memberOptions(scenario, options);
  return summaryOf(
    Array.from({ length: members }, (_, index) =>
      runMember(scenario, usualSpreads, seed, index, ownOptions),
    ),
  );
}
