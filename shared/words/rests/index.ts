import { language } from '../language';
import { en } from './en';

/** Cautions, and what the model rests on. */
export const say = language === 'de' ? (await import('../german')).rests : en;
