import { spoken } from '../spoken';
import { en } from './en';

/** Plans that hold a tank, how to mix and dose them, and how to get there. */
export const say = spoken?.plans ?? en;
