import { language } from '../language';
import { en } from './en';

/** The lesson “Why calcium hardly moves”. */
export const say = language === 'de' ? (await import('../german')).lessonCalciumHardlyMoves : en;
