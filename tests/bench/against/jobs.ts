import { readFileSync, readdirSync } from 'node:fs';
import type { Scenario } from '../../../shared/scenario/schema';
import { sixtyReadings } from '../sixtyReadings';
import type { Tree } from './bundled';

const MEMBERS = 40;
const FORTNIGHT = 14;

/** The plan of a tree's own file, as that tree reads it. */
export function planOf({ subject, scenarios }: Tree, file: string): Scenario {
  const parsed = subject.parseScenarioText(readFileSync(`${scenarios}/${file}`, 'utf8'));
  if (!parsed.ok) throw new Error(`${file} cannot be read`);
  return parsed.scenario;
}

/** What is timed of a tree. */
export type Job = (tree: Tree) => () => unknown;

export const files = (tree: Tree): string[] =>
  readdirSync(tree.scenarios).filter((name) => name.endsWith('.json'));

/** What is timed, by name: each a function of a tree that returns the work. */
export const jobs = (names: readonly string[]): Record<string, Job> => ({
  ...Object.fromEntries(
    names.map((file) => [
      `trial_90d ${file.replace('.json', '')}`,
      (tree: Tree) => {
        const plan = { ...planOf(tree, file), days: 90 };
        return () => tree.subject.run(plan);
      },
    ]),
  ),
  year: (tree) => {
    const plan = { ...planOf(tree, 'limewater-holds.json'), days: 365 };
    return () => tree.subject.run(plan);
  },
  settle: (tree) => {
    const plan = planOf(tree, 'limewater-holds.json');
    return () => tree.subject.settle(plan, tree.subject.usualOptions);
  },
  [`${MEMBERS} members`]: (tree) => {
    const { memberOptions, runMember, usualOptions, usualSpreads } = tree.subject;
    const plan = { ...planOf(tree, 'drill-stuck-pump.json'), days: FORTNIGHT };
    const options = memberOptions(plan, usualOptions);
    return () => {
      for (let index = 0; index < MEMBERS; index++) {
        runMember(plan, usualSpreads, 1, index, options);
      }
    };
  },
  fit_and_forecast: (tree) => {
    const plan = planOf(tree, 'limewater-holds.json');
    return () => tree.subject.answerLog(plan, sixtyReadings, 0.1);
  },
  three_plans: (tree) => {
    const now = planOf(tree, 'limewater-holds.json');
    const kit = { scoopG: 0, pumpMlPerMin: 0 };
    return () => tree.subject.threePlans({ now, targetDkh: 8.5, giveOrTakeDkhPerDay: 0.08, kit });
  },
});
