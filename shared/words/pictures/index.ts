import { spoken } from '../spoken';
import { en } from './en';

/** Pictures that explain: the flow, the carbon, a day, noisy tests. */
export const say = spoken?.pictures ?? en;
