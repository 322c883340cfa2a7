import { spoken } from '../spoken';
import { en } from './en';

/** What may break, and what may be done about it. */
export const say = spoken?.faults ?? en;
