import { spoken } from '../spoken';
import { en } from './en';

/** Files, links, and what is kept in the browser. */
export const say = spoken?.shelf ?? en;
