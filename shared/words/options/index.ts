import { spoken } from '../spoken';
import { en } from './en';

/** The plain words for the choices of a scenario. */
export const say = spoken?.options ?? en;
