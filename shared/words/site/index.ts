import { language } from '../language';
import { en } from './en';

/** Headline, pages, and how things are shown. */
export const say = language === 'de' ? (await import('../german')).site : en;
