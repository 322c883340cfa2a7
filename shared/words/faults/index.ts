import { language } from '../language';
import { en } from './en';

/** What may break, and what may be done about it. */
export const say = language === 'de' ? (await import('../german')).faults : en;
