import { spoken } from '../spoken';
import { en } from './en';

/** Delivered against set, from how long a bottle or the reservoir lasted. */
export const say = spoken?.stock ?? en;
