import { language } from '../language';
import { en } from './en';

/** The plans that come along. */
export const say = language === 'de' ? (await import('../german')).planShelf : en;
