import type { Shown } from './onPage';

/** Keeps, outside the page, what was shown as saved and what somebody took back. */
export class Oracle {
  /** Readings that must be there, with the moment at which they were shown. */
  readonly must = new Map<string, number>();
  /** Readings that somebody deleted, and nobody brought back. */
  readonly gone = new Set<string>();
  /** Readings that went with their tank. */
  private readonly removed = new Set<string>();
  /** The last turn of each lever of each tank: what it came to must be kept somewhere. */
  readonly turns = new Map<string, string>();
  /** Of a line that several windows changed at once, and one of them stepped back: which text stands, nobody can say. */
  readonly contested = new Set<string>();
  /** The windows that changed a line, whatever it was called at the time. */
  private readonly changedBy = new Map<string, Set<number>>();
  readonly broken: string[] = [];
  readonly journal: string[] = [];
  private readonly begun = Date.now();

  note(who: number, act: string): void {
    this.journal.push(`${String(Date.now() - this.begun).padStart(6)} ms  window ${who}  ${act}`);
  }
  fail(what: string): void {
    this.note(-1, `BROKEN: ${what}`);
    this.broken.push(what);
  }

  /** Something was written under a name of its own; another window may have taken it away already. */
  wrote(name: string): void {
    if (!this.gone.has(name) && !this.removed.has(name)) this.must.set(name, Date.now());
  }
  /** A line was changed: it is told by another name from now on. */
  edited(who: number, old: string, name: string): void {
    const windows = this.changedBy.get(old) ?? new Set();
    for (const one of [old, name]) this.changedBy.set(one, windows.add(who));
    this.deleted(old);
    this.wrote(name);
  }
  /** It is there again. */
  back(name: string): void {
    this.must.set(name, Date.now());
    this.gone.delete(name);
    this.removed.delete(name);
  }
  deleted(name: string): void {
    this.must.delete(name);
    this.gone.add(name);
  }
  /** An act that may take away or bring back only what its window has touched itself. */
  stepped(what: string, before: Shown, after: Shown, own: ReadonlySet<string>): void {
    const lost = before.names.filter((name) => !after.names.includes(name));
    const back = after.names.filter((name) => !before.names.includes(name));
    for (const name of lost) {
      if (!own.has(name)) this.fail(`${what} took ${name} away, which another window had written`);
      this.deleted(name);
    }
    for (const name of back) this.back(name);
    for (const name of own) {
      if ((this.changedBy.get(name)?.size ?? 0) < 2) continue;
      this.must.delete(name);
      this.gone.delete(name);
      this.contested.add(name);
    }
  }
  /** Turns were taken back, or went with their tank. */
  forgetTurns(): void {
    this.turns.clear();
  }
  /** A tank was removed with what was seen in it. */
  removedTank({ names }: Shown): void {
    for (const name of names) {
      this.must.delete(name);
      this.removed.add(name);
    }
    this.forgetTurns();
  }
}
