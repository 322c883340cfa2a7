import { language } from '../language';
import { en } from './en';

/** Names of what moves alkalinity: processes, pipes and events. */
export const say = language === 'de' ? (await import('../german')).ledger : en;
