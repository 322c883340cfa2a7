import { language } from '../language';
import { en } from './en';

/** What is asked of the keeper’s limits. */
export const say = language === 'de' ? (await import('../german')).limits : en;
