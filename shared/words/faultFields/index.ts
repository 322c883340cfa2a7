import { spoken } from '../spoken';
import { en } from './en';

/** What is asked of a fault and of a response to it. */
export const say = spoken?.faultFields ?? en;
