import { language } from '../language';
import { en } from './en';

/** What is asked of room air, gas exchange, lights and evaporation. */
export const say = language === 'de' ? (await import('../german')).surroundings : en;
