import { language } from '../language';
import { en } from './en';

/** The lesson “Why alkalinity falls as corals grow”. */
export const say = language === 'de' ? (await import('../german')).lessonWhyItFalls : en;
