import { language } from '../language';
import { en } from './en';

/** The plain words for the choices of a scenario. */
export const say = language === 'de' ? (await import('../german')).options : en;
