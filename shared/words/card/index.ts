import { language } from '../language';
import { en } from './en';

/** The dose card. */
export const say = language === 'de' ? (await import('../german')).card : en;
