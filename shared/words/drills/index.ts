import { language } from '../language';
import { en } from './en';

/** The drills: what breaks, how sure, how big, what then. */
export const say = language === 'de' ? (await import('../german')).drills : en;
