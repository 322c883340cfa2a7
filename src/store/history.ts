const MOST = 200;

/** Undo and redo over whole states; a run of edits under one name counts as one. */
export class History<State> {
  private past: State[] = [];
  private future: State[] = [];
  private lastName: string | undefined;

  /** To be called before a change, with the state as it still is. */
  remember(state: State, name: string): void {
    if (name === this.lastName) return;
    this.lastName = name;
    this.past = [...this.past.slice(-MOST + 1), state];
    this.future = [];
  }

  /** Ends a run of edits: the next one is a step of its own, even under the same name. */
  settle(): void {
    this.lastName = undefined;
  }

  undo(now: State): State | undefined {
    const state = this.past.pop();
    if (state !== undefined) this.future.push(now);
    this.settle();
    return state;
  }

  redo(now: State): State | undefined {
    const state = this.future.pop();
    if (state !== undefined) this.past.push(now);
    this.settle();
    return state;
  }

  /** What came from elsewhere goes into every step, so that undo takes back only what was done here. */
  rebase(onto: (state: State) => State): void {
    this.past = this.past.map(onto);
    this.future = this.future.map(onto);
  }

  get canUndo(): boolean {
    return this.past.length > 0;
  }

  get canRedo(): boolean {
    return this.future.length > 0;
  }
}
