import { spoken } from '../spoken';
import { en } from './en';

/** Sentences about bad input: where, what, what came, what was expected, a way out. */
export const say = spoken?.problems ?? en;
