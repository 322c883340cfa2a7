import { spoken } from '../spoken';
import { en } from './en';

/** A tank like theirs, in three answers. */
export const say = spoken?.firstMinute ?? en;
