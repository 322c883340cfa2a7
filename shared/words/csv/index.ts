import { language } from '../language';
import { en } from './en';

/** A log as a file: what a row says, what must be asked, what is not taken. */
export const say = language === 'de' ? (await import('../german')).csv : en;
