import { language } from '../language';
import { en } from './en';

/** What a trial says against the keeper’s limits. */
export const say = language === 'de' ? (await import('../german')).verdict : en;
