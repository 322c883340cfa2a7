import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “Why calcium hardly moves”. */
export const say = spoken?.lessonCalciumHardlyMoves ?? en;
