import { spoken } from '../spoken';
import { en } from './en';

/** The drills: what breaks, how sure, how big, what then. */
export const say = spoken?.drills ?? en;
