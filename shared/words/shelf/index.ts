import { language } from '../language';
import { en } from './en';

/** Files, links, and what is kept in the browser. */
export const say = language === 'de' ? (await import('../german')).shelf : en;
