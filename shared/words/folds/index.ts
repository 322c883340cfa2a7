import { spoken } from '../spoken';
import { en } from './en';

/** What lies folded under the bench’s charts: the ledger of a day, what differs, hour by hour. */
export const say = spoken?.folds ?? en;
