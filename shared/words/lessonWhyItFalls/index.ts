import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “Why alkalinity falls as corals grow”. */
export const say = spoken?.lessonWhyItFalls ?? en;
