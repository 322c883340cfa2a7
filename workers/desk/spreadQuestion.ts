import type { Scenario } from '../../shared/scenario/schema';
import { sampledOptions } from '../engine/sampledOptions';
import { spreadColumns, spreadOf, type Spread } from '../studies/mightBe/spread';
import { handOver } from './handOver';
import type { Job } from './question';

const handed = (spread: Spread): Spread =>
  handOver(
    spread,
    spreadColumns.flatMap((id) => [spread.below[id].buffer, spread.above[id].buffer]),
  );

/** How far the tank may be from a plan's run, told coarsely first. */
export async function spread(
  scenario: Scenario,
  { goesOn, tell }: Job<Spread>,
): Promise<Spread | undefined> {
  const options = await sampledOptions(scenario);
  for (const found of spreadOf(scenario, options)) {
    if (found.leaves !== undefined) return handed(found);
    tell(handed(found));
    if (!(await goesOn())) return undefined;
  }
  return undefined;
}
