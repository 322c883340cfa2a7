import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “How sure is one test?”. */
export const say = spoken?.lessonOneTest ?? en;
