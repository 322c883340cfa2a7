import { spoken } from '../spoken';
import { en } from './en';

/** What is said while tanks are kept in the browser. */
export const say = spoken?.saving ?? en;
