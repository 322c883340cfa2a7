import { spoken } from '../spoken';
import { en } from './en';

/** The plans that come along. */
export const say = spoken?.planShelf ?? en;
