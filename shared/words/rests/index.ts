import { spoken } from '../spoken';
import { en } from './en';

/** Cautions, and what the model rests on. */
export const say = spoken?.rests ?? en;
