import { language } from '../language';
import { en } from './en';

/** The lesson “Alkalinity is not pH”. */
export const say = language === 'de' ? (await import('../german')).lessonNotPh : en;
