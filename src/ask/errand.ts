import type { Manner } from './manners';
import type { Answer } from './answer';
import type { QuestionName } from './outcome';

/** One question on its way: waiting for a worker, or being worked at. */
export interface Errand {
  readonly id: number;
  readonly name: QuestionName;
  readonly asked: unknown;
  readonly manner: Manner;
  readonly tell: (told: unknown) => void;
  /** Called once, with whatever comes of it. */
  readonly end: (answer: Answer<unknown>) => void;
  /** When a worker took it; undefined while it waits. */
  begunMs: number | undefined;
}
