import { say as drills } from '../../shared/words/drillShelf';
import { say as plans } from '../../shared/words/planShelf';
import { parseScenario } from '../../shared/scenario/parse';
import type { Scenario } from '../../shared/scenario/schema';

const files = import.meta.glob<unknown>('../../scenarios/*.json', {
  eager: true,
  import: 'default',
});

interface OnShelf {
  readonly name: string;
  readonly scenario: Scenario;
}

const told: Readonly<Partial<Record<string, Pick<Scenario, 'title' | 'question'>>>> = {
  ...plans,
  ...drills,
};

/** The scenarios that come with Paper Reef, in the order of their file names and the words of the page. */
const shelf: readonly OnShelf[] = Object.entries(files).flatMap(([path, value]) => {
  const parsed = parseScenario(value);
  if (!parsed.ok) return [];
  const name = path.replace(/^.*\/|\.json$/g, '');
  return [{ name, scenario: { ...parsed.scenario, ...told[name] } }];
});

const breaks = ({ scenario }: OnShelf): boolean => scenario.faults.length > 0;

export const plansOnShelf = shelf.filter((one) => !breaks(one));
export const drillsOnShelf = shelf.filter(breaks);
