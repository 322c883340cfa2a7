import type { FieldPath } from '../../shared/scenario/fields';

/** What a field of a form is given: what stands in it, and two ways to change it. */
export interface FieldOf {
  readonly path: FieldPath;
  readonly value: unknown;
  /** While it is being dragged. */
  readonly drag: (value: unknown) => void;
  /** Typed or chosen, or let go after a drag: a step of its own. */
  readonly put: (value: unknown) => void;
  /** How often undo and redo were used: they take back what stands half-typed, too. */
  readonly walks?: number;
}

/** A field over a setter; `settle` ends a step. */
export const fieldOf = (
  path: FieldPath,
  value: unknown,
  set: (path: FieldPath, value: unknown) => void,
  settle = () => {},
): FieldOf => ({
  ...{ path, value },
  drag: (next) => set(path, next),
  put: (next) => {
    settle();
    if (next !== value) set(path, next);
    settle();
  },
});
