import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “When water changes stop being enough”. */
export const say = spoken?.lessonWaterChanges ?? en;
