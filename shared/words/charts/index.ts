import { spoken } from '../spoken';
import { en } from './en';

/** Charts, their titles and the clock beside them. */
export const say = spoken?.charts ?? en;
