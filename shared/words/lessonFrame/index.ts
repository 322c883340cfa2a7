import { language } from '../language';
import { en } from './en';

/** What stands around every lesson. */
export const say = language === 'de' ? (await import('../german')).lessonFrame : en;
