import { parseScenario } from '../../shared/scenario/parse';
import type { Scenario } from '../../shared/scenario/schema';

const files = import.meta.glob<unknown>('../../scenarios/*.json', {
  eager: true,
  import: 'default',
});

/** The scenarios that come with Paper Reef, in the order of their file names. */
export const shelf: readonly { readonly name: string; readonly scenario: Scenario }[] =
  Object.entries(files).flatMap(([path, value]) => {
    const parsed = parseScenario(value);
    if (!parsed.ok) return [];
    return [{ name: path.replace(/^.*\/|\.json$/g, ''), scenario: parsed.scenario }];
  });
