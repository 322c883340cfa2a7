import { spoken } from '../spoken';
import { en } from './en';

/** The lesson “Limewater, pH and the room’s air”. */
export const say = spoken?.lessonLimewaterAir ?? en;
