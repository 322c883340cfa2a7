import { language } from '../language';
import { en } from './en';

/** The lesson “The slow drip and the stuck pump”. */
export const say = language === 'de' ? (await import('../german')).lessonDripAndStuckPump : en;
