import type { FieldPath } from '../../shared/scenario/fields';
import { pathText } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import { verdictOf, type Verdict } from '../../shared/verdict/verdict';
import { TrialClient } from '../client/trialClient';
import type { GasSolution, TrialOutcome } from '../client/outcome';
import { withValue } from './change';
import { History } from './history';
import { MOST_TRIALS } from './inks';
import {
  openingPlans,
  replacing,
  withoutPlan,
  withPlan,
  type BenchPlans,
  type PlanOnBench,
} from './plans';
import { loadBench, saveBench } from './store';

/** What a plan's trial gave, with the scenario it belongs to. */
export interface Result {
  readonly scenario: Scenario;
  readonly outcome: TrialOutcome;
  readonly verdict: Verdict;
}

const SAVE_AFTER_MS = 300;

/** The bench: plans, their trials, one time cursor, undo and redo, autosave. */
export class Bench {
  private state: BenchPlans = $state.raw({ plans: [], selected: '' });
  private outcomes: ReadonlyMap<string, Result> = $state.raw(new Map());
  private troubles: ReadonlyMap<string, string> = $state.raw(new Map());
  private progressOf: ReadonlyMap<string, number> = $state.raw(new Map());
  private historyVersion = $state(0);
  private readonly history = new History<BenchPlans>();
  private readonly client = new TrialClient();
  /** Nothing is saved before what was saved has been read. */
  private restored = false;
  private saveTimer: ReturnType<typeof setTimeout> | undefined;
  cursorH = $state(0);
  notice = $state('');

  constructor(private readonly example: Scenario) {
    this.show(openingPlans(example));
  }

  get plans(): readonly PlanOnBench[] {
    return this.state.plans;
  }
  get selected(): PlanOnBench {
    return this.state.plans.find(({ id }) => id === this.state.selected) ?? this.state.plans[0]!;
  }
  get today(): PlanOnBench {
    return this.state.plans[0]!;
  }
  get canAdd(): boolean {
    return this.state.plans.length < MOST_TRIALS;
  }
  get canUndo(): boolean {
    return this.historyVersion >= 0 && this.history.canUndo;
  }
  get canRedo(): boolean {
    return this.historyVersion >= 0 && this.history.canRedo;
  }
  resultOf(id: string): Result | undefined {
    return this.outcomes.get(id);
  }
  troubleOf(id: string): string | undefined {
    return this.troubles.get(id);
  }
  /** Share done of a trial that takes long; undefined when none is under way. */
  progress(id: string): number | undefined {
    return this.progressOf.get(id);
  }

  /** Brings back what was saved; the example stays when nothing was. */
  async restore(): Promise<void> {
    try {
      const saved = await loadBench();
      if (saved) this.show(saved);
    } catch {
      this.notice = 'This browser keeps nothing between visits here. Save your plan as a file.';
    }
    this.restored = true;
  }

  select(id: string): void {
    this.history.settle();
    this.show({ ...this.state, selected: id });
  }
  set(path: FieldPath, value: unknown): void {
    const { id, scenario } = this.selected;
    this.change(`${id} ${pathText(path)}`, {
      ...replacing(this.state, id, { scenario: withValue(scenario, path, value) }),
    });
  }
  setSeveral(changes: readonly (readonly [FieldPath, unknown])[]): void {
    const { id, scenario } = this.selected;
    const changed = changes.reduce((s, [path, value]) => withValue(s, path, value), scenario);
    this.settle();
    this.change('several', replacing(this.state, id, { scenario: changed }));
    this.settle();
  }
  /** Works out kLa and photosynthesis from the readings in the selected plan, and takes them. */
  async solveGas(): Promise<GasSolution | string> {
    const answer = await this.client.solveGas(this.selected.scenario);
    if (answer.kind === 'failed') return answer.failure.message;
    if (answer.kind === 'superseded') return 'Another question came first.';
    this.setSeveral([
      [['gas', 'kLaPerH'], answer.value.kLaPerH],
      [['photosynthesis', 'grossMmolPerLPerDay'], answer.value.grossMmolPerLPerDay],
    ]);
    return answer.value;
  }
  /** The end of a drag: the next edit is a step of its own. */
  settle(): void {
    this.history.settle();
  }
  /** Keeps the selected plan as it is and goes on with a copy. */
  keep(): void {
    if (this.canAdd) this.change('keep', withPlan(this.state, this.selected.scenario));
  }
  remove(id: string): void {
    if (this.state.plans.length > 1) this.change(`remove ${id}`, withoutPlan(this.state, id));
  }
  rename(name: string): void {
    const { id } = this.selected;
    this.change(
      `rename ${id}`,
      replacing(this.state, id, { name: name.trim() || 'Unnamed trial' }),
    );
  }
  /** A scenario from a file or the shelf: as today's plan with one trial beside it. */
  open(scenario: Scenario): void {
    this.settle();
    this.change('open', openingPlans(scenario));
    this.cursorH = 0;
  }
  startOver(): void {
    this.open(this.example);
  }
  undo(): void {
    const state = this.history.undo(this.state);
    if (state) this.show(state);
  }
  redo(): void {
    const state = this.history.redo(this.state);
    if (state) this.show(state);
  }

  private change(name: string, next: BenchPlans): void {
    this.history.remember(this.state, name);
    this.show(next);
  }

  private show(next: BenchPlans): void {
    const before = this.state;
    this.state = next;
    this.historyVersion++;
    for (const plan of next.plans) {
      const old = before.plans.find(({ id }) => id === plan.id);
      if (old?.scenario !== plan.scenario) this.run(plan);
    }
    for (const { id } of before.plans) {
      if (!next.plans.some((plan) => plan.id === id)) this.forget(id);
    }
    this.saveSoon();
  }

  private run({ id, scenario }: PlanOnBench): void {
    this.client.request(id, scenario, {
      done: (outcome) => {
        this.troubles = without(this.troubles, id);
        this.progressOf = without(this.progressOf, id);
        this.put(id, scenario, outcome);
      },
      progress: ({ hours, of, partial }) => {
        this.progressOf = new Map(this.progressOf).set(id, hours / of);
        if (partial) this.put(id, scenario, partial);
      },
      failed: (message) => {
        this.progressOf = without(this.progressOf, id);
        this.troubles = new Map(this.troubles).set(id, message);
      },
    });
  }

  private put(id: string, scenario: Scenario, outcome: TrialOutcome): void {
    if (!this.state.plans.some((plan) => plan.id === id)) return;
    const verdict = verdictOf(scenario, outcome);
    this.outcomes = new Map(this.outcomes).set(id, { scenario, outcome, verdict });
  }

  private forget(id: string): void {
    this.client.drop(id);
    this.outcomes = without(this.outcomes, id);
    this.troubles = without(this.troubles, id);
  }

  private saveSoon(): void {
    clearTimeout(this.saveTimer);
    this.saveTimer = setTimeout(() => void this.saveNow(), SAVE_AFTER_MS);
  }

  /** Saves at once; to be called when the page is about to be hidden. */
  async saveNow(): Promise<void> {
    clearTimeout(this.saveTimer);
    if (!this.restored) return;
    try {
      await saveBench(this.state);
    } catch {
      this.notice = 'Nothing could be saved in this browser. Save your plan as a file.';
    }
  }
}

function without<V>(map: ReadonlyMap<string, V>, key: string): ReadonlyMap<string, V> {
  const copy = new Map(map);
  copy.delete(key);
  return copy;
}
