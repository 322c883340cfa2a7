import { spoken } from '../spoken';
import { en } from './en';

/** What a trial says against the keeper’s limits. */
export const say = spoken?.verdict ?? en;
