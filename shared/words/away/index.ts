import { spoken } from '../spoken';
import { en } from './en';

/** Days without the keeper, and the sheet for whoever looks after the tank. */
export const say = spoken?.away ?? en;
