import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “Small tank, fast tank”. */
export const say = spoken?.lessonSmallTank ?? en;
