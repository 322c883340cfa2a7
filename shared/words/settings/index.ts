import { language } from '../language';
import { en } from './en';

/** Groups of settings and what is asked beside a field. */
export const say = language === 'de' ? (await import('../german')).settings : en;
