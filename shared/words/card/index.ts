import { spoken } from '../spoken';
import { en } from './en';

/** The dose card. */
export const say = spoken?.card ?? en;
