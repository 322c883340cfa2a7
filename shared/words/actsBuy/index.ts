import { spoken } from '../spoken';
import { en } from './en';

/** What an act of the first hour buys. */
export const say = spoken?.actsBuy ?? en;
