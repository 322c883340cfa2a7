import { spoken } from '../spoken';
import { en } from './en';

/** What the page of the log says beside its fields: lines, tanks, and how a reading is judged. */
export const say = spoken?.logPage ?? en;
