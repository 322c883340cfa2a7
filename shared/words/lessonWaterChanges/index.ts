import { language } from '../language';
import { en } from './en';

/** The lesson “When water changes stop being enough”. */
export const say = language === 'de' ? (await import('../german')).lessonWaterChanges : en;
