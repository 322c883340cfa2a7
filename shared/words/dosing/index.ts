import { language } from '../language';
import { en } from './en';

/** What is asked of top-off, dosing pumps, water changes and additions. */
export const say = language === 'de' ? (await import('../german')).dosing : en;
