import { language } from '../language';
import { en } from './en';

/** The lesson “Limewater, pH and the room’s air”. */
export const say = language === 'de' ? (await import('../german')).lessonLimewaterAir : en;
