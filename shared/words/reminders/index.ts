import { spoken } from '../spoken';
import { en } from './en';

/** What a calendar reminds of. */
export const say = spoken?.reminders ?? en;
