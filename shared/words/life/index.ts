import { language } from '../language';
import { en } from './en';

/** What is asked of corals, photosynthesis, food, filter and precipitation. */
export const say = language === 'de' ? (await import('../german')).life : en;
