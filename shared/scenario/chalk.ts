import type { Scenario } from './schema';

type Mode = Scenario['precipitation']['mode'];

const withMode = (scenario: Scenario, mode: Mode): Scenario => ({
  ...scenario,
  precipitation: { ...scenario.precipitation, mode },
});

/** Nothing falls out: a time to danger is told so, since nobody can predict when chalk falls. */
export const withoutChalk = (scenario: Scenario): Scenario => withMode(scenario, 'off');

/** Chalk falls at once, as the plan has it or above Ω 10: the other end of the range, an illustration. */
export const withChalk = (scenario: Scenario): Scenario =>
  scenario.precipitation.mode === 'off' ? withMode(scenario, 'guarded') : scenario;
