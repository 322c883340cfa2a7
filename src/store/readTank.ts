import { isLocalTime } from '../../shared/log/localTime';
import { readTankLog } from '../../shared/log/readTankLog';
import { readScenario } from '../../shared/scenario/parse';
import { sentence } from '../../shared/scenario/sentence';
import type { Scenario } from '../../shared/scenario/schema';
import { say as problemWords } from '../../shared/words/problems';
import { say as words } from '../../shared/words/shelf';
import { example } from './example';
import { inks, MOST_TRIALS } from './inks';
import { freeId, freeInk, TODAY, type BenchPlans, type PlanOnBench, type RanBy } from './plans';
import type { Tank } from './tanks';

interface ReadTank {
  readonly tank: Tank | undefined;
  /** What of it could not be read, a sentence each; none when it is whole. */
  readonly problems: readonly string[];
}

type Part = Readonly<Record<string, unknown>>;
const isPart = (value: unknown): value is Part =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const textOr = (value: unknown, other: string) =>
  typeof value === 'string' && value !== '' ? value : other;
const say = words.unread;

/** Reads parts of one tank and gathers what cannot be read, with its place. */
class Reader {
  readonly problems: string[] = [];

  scenario(value: unknown, place: string): Scenario | undefined {
    const read = readScenario(value);
    if (read.ok) return read.scenario;
    this.problems.push(
      ...read.problems.map((problem) => problemWords.named(place, sentence(problem))),
    );
    return undefined;
  }

  /** Plans under names, inks and ids of their own; one that cannot be read leaves its place empty. */
  plans(list: readonly unknown[]): (PlanOnBench | undefined)[] {
    const taken: PlanOnBench[] = [];
    if (list.length > MOST_TRIALS) {
      this.problems.push(say.tooManyPlans(String(list.length), String(MOST_TRIALS)));
    }
    return list.slice(0, MOST_TRIALS).map((value, i) => {
      const raw = isPart(value) ? value : {};
      const name = textOr(raw.name, i === 0 ? TODAY : say.planWithoutName(String(i + 1)));
      const scenario = this.scenario(raw.scenario, name);
      if (!scenario) return undefined;
      const own = (key: 'id' | 'ink') => !taken.some((other) => other[key] === raw[key]);
      const plan = {
        id: typeof raw.id === 'string' && own('id') ? raw.id : freeId(taken),
        name,
        ink: typeof raw.ink === 'number' && inks[raw.ink] && own('ink') ? raw.ink : freeInk(taken),
        scenario,
      };
      taken.push(plan);
      return plan;
    });
  }

  before(value: unknown): RanBy[] {
    return (Array.isArray(value) ? value : []).flatMap((raw: unknown) => {
      const { since, scenario, turned } = isPart(raw) ? raw : {};
      const at = typeof since === 'string' && isLocalTime(since) ? since : '';
      const read = this.scenario(scenario, say.earlierPlan(at));
      return read
        ? { since: at, scenario: read, ...(turned === true && { turned: true as const }) }
        : [];
    });
  }

  /** A bench; what the tank ran by last stands in for a plan of today that cannot be read. */
  bench(value: unknown): BenchPlans {
    const raw = isPart(value) ? value : {};
    const list = Array.isArray(raw.plans) ? raw.plans : [];
    if (list.length === 0) this.problems.push(say.noPlans);
    const [first, ...others] = this.plans(list);
    const trials = others.flatMap((plan) => plan ?? []);
    const before = this.before(raw.before);
    const standIn = () => before.at(-1)?.scenario ?? trials[0]?.scenario ?? example;
    const { id, ink } = { id: freeId(trials), ink: freeInk(trials) };
    const today = first ?? { id, ink, name: TODAY, scenario: standIn() };
    const plans = [today, ...trials];
    const said = typeof raw.since === 'string' && isLocalTime(raw.since) && first;
    return {
      ...{ plans, before, since: said ? (raw.since as string) : '' },
      selected: plans.find((plan) => plan.id === raw.selected)?.id ?? today.id,
      ...(raw.untouched === true && plans.length === list.length && { untouched: true }),
    };
  }
}

/** The one way in for a tank, wherever it was kept: as much of it as can be read, and what cannot. */
export function readTank(saved: unknown, usualId = 'tank-1'): ReadTank {
  if (!isPart(saved)) return { tank: undefined, problems: [say.noTank] };
  // What was saved before there were tanks is the bench of the first.
  const raw: Part = Array.isArray(saved.plans) ? { bench: saved } : saved;
  const reader = new Reader();
  const bench = reader.bench(raw.bench);
  const { log, problems } = readTankLog(raw.log);
  reader.problems.push(...problems.map(sentence));
  const isEmpty = log.readings.length + log.checks.length === 0;
  if (isEmpty && bench.plans.every(({ scenario }) => scenario === example)) {
    return { tank: undefined, problems: reader.problems };
  }
  const name = textOr(raw.name, bench.plans[0]!.scenario.title);
  const edition = typeof raw.edition === 'string' ? { edition: raw.edition } : {};
  const id = textOr(raw.id, usualId);
  return { tank: { id, name, bench, log, ...edition }, problems: reader.problems };
}
