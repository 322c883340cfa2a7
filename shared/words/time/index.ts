import { language } from '../language';
import { en } from './en';

/** Clock, stretches of time and dates. */
export const say = language === 'de' ? (await import('../german')).time : en;
