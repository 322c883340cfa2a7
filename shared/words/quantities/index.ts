import { spoken } from '../spoken';
import { en } from './en';

/** Names of quantities, limits, substances and units. */
export const say = spoken?.quantities ?? en;
