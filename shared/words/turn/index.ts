import { spoken } from '../spoken';
import { en } from './en';

/** What to turn of what runs already, and when a level is reached. */
export const say = spoken?.turn ?? en;
