import { language } from '../language';
import { en } from './en';

/** Pictures that explain: the flow, the carbon, a day, noisy tests. */
export const say = language === 'de' ? (await import('../german')).pictures : en;
