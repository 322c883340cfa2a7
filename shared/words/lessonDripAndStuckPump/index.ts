import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “The slow drip and the stuck pump”. */
export const say = spoken?.lessonDripAndStuckPump ?? en;
