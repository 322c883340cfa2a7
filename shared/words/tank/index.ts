import { language } from '../language';
import { en } from './en';

/** What is asked of a scenario, its tank and its start. */
export const say = language === 'de' ? (await import('../german')).tank : en;
