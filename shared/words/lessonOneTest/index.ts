import { language } from '../language';
import { en } from './en';

/** The lesson “How sure is one test?”. */
export const say = language === 'de' ? (await import('../german')).lessonOneTest : en;
