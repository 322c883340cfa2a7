import { language } from '../language';
import { en } from './en';

/** Sentences about bad input: where, what, what came, what was expected, a way out. */
export const say = language === 'de' ? (await import('../german')).problems : en;
