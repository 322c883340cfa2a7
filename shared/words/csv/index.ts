import { spoken } from '../spoken';
import { en } from './en';

/** A log as a file: what a row says, what must be asked, what is not taken. */
export const say = spoken?.csv ?? en;
