import { History } from './history';

/** Who hears of a state: whatever shows it, and whatever saves what was done here. */
interface Heard<State> {
  readonly shown?: (state: State) => void;
  readonly changed: (state: State) => void;
}

/** A state that is changed step by step, with one way back: the bench’s plans, a tank’s log. */
export class Edits<State> {
  private state: State = $state.raw() as State;
  /** Counts what was shown, so that what asks the history is asked again. */
  private shows = $state(0);
  /** Counts undo and redo. */
  walks = $state(0);
  private history = new History<State>();

  constructor(
    first: State,
    private readonly heard: Heard<State>,
  ) {
    this.show(first);
  }

  get now(): State {
    return this.state;
  }
  get canUndo(): boolean {
    return this.shows >= 0 && this.history.canUndo;
  }
  get canRedo(): boolean {
    return this.shows >= 0 && this.history.canRedo;
  }

  /** Another tank’s; what was done to the last one is not undone in this. */
  open(state: State): void {
    this.history = new History();
    this.show(state);
  }
  /** What another window has made of it, and of each earlier step; what was done here can still be undone. */
  follow(state: State, onto: (step: State) => State): void {
    this.history.rebase(onto);
    this.show(state);
  }
  /** A change that is no step: undo passes over it. */
  put(state: State): void {
    this.show(state);
    this.heard.changed(state);
  }
  /** A change under a name; a run of them under one name undoes as one. */
  edit(name: string, state: State): void {
    this.history.remember(this.state, name);
    this.put(state);
  }
  /** A change that is a step of its own. */
  step(state: State): void {
    this.settle();
    this.edit('a step', state);
    this.settle();
  }
  /** The end of a run of changes: the next one is a step of its own. */
  settle(): void {
    this.history.settle();
  }
  undo(): void {
    this.walk(this.history.undo(this.state));
  }
  redo(): void {
    this.walk(this.history.redo(this.state));
  }

  private walk(state: State | undefined): void {
    this.walks++;
    if (state !== undefined) this.put(state);
  }

  private show(state: State): void {
    this.state = state;
    this.shows++;
    this.heard.shown?.(state);
  }
}
