import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “Alkalinity is not pH”. */
export const say = spoken?.lessonNotPh ?? en;
