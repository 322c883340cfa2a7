import { spoken } from '../spoken';
import { en } from './en';

/** What is asked of the keeper’s limits. */
export const say = spoken?.limits ?? en;
