import { spoken } from '../spoken';
import { en } from './en';

/** What is asked of top-off, dosing pumps, water changes and additions. */
export const say = spoken?.dosing ?? en;
