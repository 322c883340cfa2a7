import { language } from '../language';
import { en } from './en';

/** What a test log says of its tank, and what it cannot say. */
export const say = language === 'de' ? (await import('../german')).fit : en;
