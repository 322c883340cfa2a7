import { spoken } from '../spoken';
import { en } from './en';

/** Groups of settings and what is asked beside a field. */
export const say = spoken?.settings ?? en;
