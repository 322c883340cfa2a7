import type { FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import type { ColumnId } from '../../shared/trace/columns';
import type { Outcome } from '../../shared/verdict/outcome';

/** A scenario and what the engine made of it. */
export interface LessonRun {
  readonly scenario: Scenario;
  readonly outcome: Outcome;
}

/** The runs that a lesson's texts may speak of. */
export const runNames = ['begin', 'predicted', 'now', 'asked'] as const;
export type RunName = (typeof runNames)[number];
export type LessonRuns = Readonly<Record<RunName, LessonRun>>;

/** What a run changes against the lesson's own scenario. */
export type Changes = readonly (readonly [FieldPath, unknown])[];

export interface Choice {
  readonly id: string;
  readonly text: string;
}

/**
 * One guided experiment. In every text a number is a placeholder that the engine's runs fill:
 * `{begin.alkalinityEnd}` is a measure of a run, `{now.room.co2Ppm}` a setting of it. Digits
 * otherwise stand only in the equation.
 */
export interface Lesson {
  /** Also its address: lessons/<id>. */
  readonly id: string;
  readonly title: string;
  /** One line for the list. */
  readonly about: string;
  readonly scenario: Scenario;
  /** The tank and what is about to be done to it. */
  readonly setting: string;
  readonly predict: {
    readonly question: string;
    readonly choices: readonly Choice[];
    /** The choice that the texts argue for; `judge` must come to the same. */
    readonly right: string;
    readonly changes: Changes;
    /** Which choice the engine's runs make true. */
    readonly judge: (runs: LessonRuns) => string;
  };
  readonly reveal: string;
  /** The one thing to move. */
  readonly control: {
    readonly path: FieldPath;
    readonly range: readonly [number, number];
    readonly title?: string;
    readonly invite: string;
    /** What it comes to, at the setting of the moment. */
    readonly now: string;
  };
  readonly ask: { readonly question: string; readonly changes: Changes; readonly answer: string };
  readonly why: readonly string[];
  readonly equation: { readonly text: string; readonly inWords: string };
  readonly charts: readonly ColumnId[];
  readonly pictures: readonly ('flow' | 'species' | 'day' | 'tests')[];
  /** What the picture of the engine's world leaves out, or takes from common practice. */
  readonly assumes: string;
}
