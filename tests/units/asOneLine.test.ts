import { expect, it } from 'vitest';
import { asOneLine, type ShownTrial } from '../../src/bench/shownTrials';
import { inks } from '../../src/store/inks';

const [one, other] = [{}, {}] as ShownTrial['trace'][];
const trial = (id: string, trace: ShownTrial['trace'] | undefined): ShownTrial => ({
  ...{ id, name: id.toUpperCase(), ink: inks[0]!, trace: trace! },
});

it('trials that are the same are one line, said once, in the ink of the one that is selected', () => {
  const all = [trial('a', one), trial('b', other), trial('c', one)];
  const shown = (selected: string) =>
    asOneLine(all, selected).map(({ id, name }) => `${id}: ${name}`);
  expect(shown('a')).toEqual(['a: A = C', 'b: B']);
  expect(shown('b')).toEqual(['a: A = C', 'b: B']);
  expect(shown('c')).toEqual(['c: A = C', 'b: B']);
});
