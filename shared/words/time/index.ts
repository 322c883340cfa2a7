import { spoken } from '../spoken';
import { en } from './en';

/** Clock, stretches of time and dates. */
export const say = spoken?.time ?? en;
