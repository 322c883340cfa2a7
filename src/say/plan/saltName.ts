import { saltMixes } from '../../../shared/water/saltMixes';
import { say } from '../../../shared/words/plans';

const [low, high] = saltMixes.map(({ name }) => name);
const { salts } = say.recipe;

/** One of the two families in the reader's words; a mix of the keeper's own as it is called. */
export const saltName = (name: string): string =>
  name === low ? salts.low : name === high ? salts.high : name;
