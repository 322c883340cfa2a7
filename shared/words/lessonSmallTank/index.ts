import { language } from '../language';
import { en } from './en';

/** The lesson “Small tank, fast tank”. */
export const say = language === 'de' ? (await import('../german')).lessonSmallTank : en;
