import { spoken } from '../spoken';
import { en } from './en';

/** What to do when something has failed. */
export const say = spoken?.firstHour ?? en;
