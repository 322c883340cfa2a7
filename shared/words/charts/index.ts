import { language } from '../language';
import { en } from './en';

/** Charts, their titles and the clock beside them. */
export const say = language === 'de' ? (await import('../german')).charts : en;
