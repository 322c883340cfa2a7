import { language } from '../language';
import { en } from './en';

/** What is asked of a fault and of a response to it. */
export const say = language === 'de' ? (await import('../german')).faultFields : en;
