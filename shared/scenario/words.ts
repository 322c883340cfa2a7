import { say } from '../words/options';
import { faultKinds, responseKinds } from '../faults/faultKinds';
import { additives, type AdditiveId } from '../species/additives';

const labelsOf = (kinds: Readonly<Record<string, { label: string }>>) =>
  Object.fromEntries(Object.entries(kinds).map(([id, { label }]) => [id, label]));

const words: Readonly<Record<string, string>> = {
  ...say,
  ...labelsOf(faultKinds),
  ...labelsOf(responseKinds),
};

/** The plain words for a choice. */
export const wordFor = (option: string): string =>
  option in additives ? additives[option as AdditiveId].label : (words[option] ?? option);
