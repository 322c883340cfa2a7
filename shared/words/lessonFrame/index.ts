import { spoken } from '../spoken';
import { en } from './en';

/** What stands around every lesson. */
export const say = spoken?.lessonFrame ?? en;
