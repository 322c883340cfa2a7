import type { Crossing, Trace } from '../trace/trace';
import type { LineResult } from './lineResult';

/** Where and why a run ended before its time. */
export interface Stopped {
  readonly timeH: number;
  readonly why: WhyStopped;
}

export type WhyStopped =
  /** The tank is drying up: for want of water, or for too much salt. */
  | {
      readonly kind: 'noWater' | 'tooSalty';
      readonly salinityPractical: number;
      readonly volumeL: number;
    }
  /** Something switches or reacts so often that the hour would never end. */
  | { readonly kind: 'neverEnds'; readonly steps: number }
  /** A solver's complaint. */
  | { readonly kind: 'noChemistry'; readonly complaint: string };

/** What a run gives a verdict to judge. */
export interface Outcome {
  readonly trace: Trace;
  readonly crossings: readonly Crossing[];
  /** How every watched line fared. */
  readonly lines: readonly LineResult[];
  /** False when the plan has no daily cycle to settle on, and started from the room's air. */
  readonly settled: boolean;
  readonly stopped: Stopped | undefined;
  /** Saturation of the first day that the growth laws refer to. */
  readonly omegaReference: number;
}
