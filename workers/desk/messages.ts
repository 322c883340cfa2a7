import type { Answer } from './answer';

/** What the page says to a worker: a numbered job, or that one is no longer wanted. */
export type ToWorker =
  | { readonly kind: 'job'; readonly id: number; readonly name: string; readonly asked: unknown }
  | { readonly kind: 'cancel'; readonly id: number };

/** What a worker says: that it listens, how far a job is, what came of it. */
export type FromWorker =
  | { readonly kind: 'listening' }
  | { readonly kind: 'told'; readonly id: number; readonly told: unknown }
  | { readonly kind: 'answer'; readonly id: number; readonly answer: Answer<unknown> };

/** An end of the border: a worker's own scope, or a message port. */
export interface Post<Sent> {
  postMessage(message: Sent, transfer: Transferable[]): void;
}
