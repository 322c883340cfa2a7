import { spoken } from '../spoken';
import { en } from './en';

/** The drawn tank. */
export const say = spoken?.drawing ?? en;
