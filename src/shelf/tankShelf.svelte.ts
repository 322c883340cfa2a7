import { say } from '../../shared/words/saving';
import type { TankLog } from '../../shared/log/tankLog';
import type { Scenario } from '../../shared/scenario/schema';
import { Autosave, type Rebase } from '../store/autosave';
import type { Bench } from '../bench/bench.svelte';
import { openingPlans, type BenchPlans } from '../store/plans';
import { besides } from '../store/besides';
import { keepOpen, lastOpen } from '../store/lastOpen';
import { freshTankId, newTank, type Tank } from '../store/tanks';
import { TestLog } from '../diary/testLog.svelte';

/** Every tank; one of them is open: its plans on the bench, its readings in the log. */
export class TankShelf {
  private all: readonly Tank[] = $state.raw([]);
  private currentId = $state(lastOpen() ?? 'tank-1');
  readonly log: TestLog;
  private readonly autosave: Autosave;
  /** What saving has to say. */
  notice = $state('');
  /** The tank that was removed last, and where it stood; until the page is loaded anew. */
  removed: { readonly tank: Tank; readonly place: number } | undefined = $state.raw();
  /** Whether nothing had been saved in this browser before; a guess until the store has answered. */
  firstVisit = $state(lastOpen() === null);

  constructor(private readonly bench: Bench) {
    this.autosave = new Autosave({
      trouble: (notice) => (this.notice = notice),
      changedElsewhere: (tank, onto) => this.takeOver(tank, onto),
      removedElsewhere: (id) => {
        const { name } = this.all.find((one) => one.id === id) ?? {};
        if (name !== undefined && this.takeOut(id)) this.notice = say.removedElsewhere(name);
      },
    });
    this.log = new TestLog((log) => this.change({ log }, 0));
    this.all = [newTank(this.currentId, bench.plans.today.scenario.title, bench.plans.now)];
    this.autosave.begin(this.current);
    bench.plans.onChange = (now) => this.change({ bench: now, name: this.nameWith(now) });
    bench.beside.isLogged = () => this.log.readings.length > 0;
  }

  get tanks(): readonly Tank[] {
    return this.all;
  }
  get current(): Tank {
    return this.all.find(({ id }) => id === this.currentId) ?? this.all[0]!;
  }

  /** Brings back what was saved; the example stays when nothing was. */
  async restore(): Promise<void> {
    const shown = this.all[0]!;
    const saved = await this.autosave.restore(shown.id);
    this.firstVisit = saved.length === 0;
    if (saved.length === 0) return;
    const [quick, ...added] = this.all as [Tank, ...Tank[]];
    this.all = [...saved, ...added];
    this.open(lastOpen() ?? saved[0]!.id);
    this.takeAlong(shown, quick);
  }
  /** Who was quicker than the store has typed into the tank that now opens. */
  private takeAlong({ bench: shown, log: empty }: Tank, { bench, log, name }: Tank): void {
    const { scenario } = bench.plans.find(({ id }) => id === bench.selected)!;
    // What a tank was said to run by is that tank's, and no setting of another.
    if (bench.since !== shown.since) this.addAll([newTank(freshTankId(), name, bench)]);
    else this.bench.plans.turnAlike(shown.plans[0]!.scenario, scenario);
    if (log !== empty) {
      const { readings, ...settings } = log;
      const typed = Object.entries(settings).filter(
        ([key, value]) => value !== empty[key as keyof TankLog],
      );
      if (typed.length > 0) this.log.set(Object.fromEntries(typed));
      if (readings.length > 0) this.log.add(readings);
    }
  }
  /** To be called when the page is about to go away. */
  saveBeforeLeaving(): void {
    this.autosave.beforeLeaving();
  }

  open(id: string): void {
    const tank = this.all.find((one) => one.id === id) ?? this.all[0]!;
    this.currentId = tank.id;
    keepOpen(tank.id);
    this.show(tank);
  }
  add(name: string, plan: Scenario): void {
    const id = freshTankId();
    const tank = newTank(id, name, openingPlans({ ...plan, title: name, place: '', question: '' }));
    this.all = [...this.all, tank];
    this.autosave.begin(tank);
    this.autosave.soon(tank);
    this.open(id);
  }
  /** Tanks of a file beside those that are here; says how many were new. */
  addAll(file: readonly Tank[]): number {
    const added = besides(this.all, file);
    this.all = [...this.all, ...added];
    for (const tank of added) {
      this.autosave.begin(tank);
      this.autosave.soon(tank);
    }
    return added.length;
  }
  rename(name: string): void {
    this.change({ name: name.trim() || say.unnamedTank });
  }
  async remove(id: string): Promise<void> {
    if (this.takeOut(id)) await this.autosave.remove(id);
  }
  /** The last tank stays: there is always one. */
  private takeOut(id: string): boolean {
    const tank = this.all.find((one) => one.id === id);
    if (this.all.length < 2 || !tank) return false;
    this.removed = { tank, place: this.all.indexOf(tank) };
    this.all = this.all.filter((one) => one !== tank);
    if (id === this.currentId) this.open(this.all[0]!.id);
    return true;
  }
  /** The tank that was removed last is there again, open and saved, as it was. */
  bringBack(): void {
    if (!this.removed) return;
    const { tank, place } = this.removed;
    this.removed = undefined;
    this.all = this.all.toSpliced(place, 0, tank);
    this.autosave.soon(tank);
    this.open(tank.id);
  }

  /** Shows what another window has made of a tank. */
  private takeOver(tank: Tank, onto: Rebase): void {
    const shown = this.all.find(({ id }) => id === tank.id);
    if (this.removed?.tank.id === tank.id) this.removed = undefined;
    this.all = shown ? this.all.map((one) => (one === shown ? tank : one)) : [...this.all, tank];
    if (!shown || tank.id !== this.currentId) return;
    const step = (change: Partial<Tank>) => onto({ ...shown, ...change }, shown, tank);
    this.bench.plans.follow(tank.bench, (bench) => step({ bench }).bench);
    this.log.follow(tank.log, (log) => step({ log }).log);
  }

  /** A tank that is called as its plan goes on being so. */
  private nameWith({ plans }: BenchPlans): string {
    const { name, bench } = this.current;
    return name === bench.plans[0]!.scenario.title ? plans[0]!.scenario.title : name;
  }

  /** Shows a tank without taking that for a change of it. */
  private show(tank: Tank): void {
    this.bench.open(tank.bench);
    this.log.edits.open(tank.log);
  }

  private change(change: Partial<Tank>, afterMs?: number): void {
    const tank = { ...this.current, ...change };
    // The next visit waits for what is saved now.
    if (lastOpen() === null) keepOpen(tank.id);
    this.all = this.all.map((one) => (one.id === tank.id ? tank : one));
    this.autosave.soon(tank, afterMs);
  }
}
