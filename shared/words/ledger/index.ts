import { spoken } from '../spoken';
import { en } from './en';

/** Names of what moves alkalinity: processes, pipes and events. */
export const say = spoken?.ledger ?? en;
