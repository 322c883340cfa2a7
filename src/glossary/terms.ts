import { say } from '../../shared/words/glossary';
import { language } from '../../shared/words/language';

export type TermId = keyof typeof say;

/** A word of the trade or of this page, and its sentence. */
interface Term {
  readonly id: TermId;
  readonly term: string;
  readonly sentence: string;
}

/** Every word, in the order of the alphabet. */
export const terms: readonly Term[] = Object.entries(say)
  .map(([id, entry]) => ({ id: id as TermId, ...entry }))
  .sort((a, b) => a.term.localeCompare(b.term, language));

export const sentenceOf = (id: TermId): string => say[id].sentence;

export const nameOf = (id: TermId): string => say[id].term;
