import { spoken } from '../spoken';
import { en } from './en';

/** The bench: verdict, trials, ledger, differences, hours, the first minute. */
export const say = spoken?.bench ?? en;
