import { language } from '../language';
import { en } from './en';

/** What happens in a drill, as its answer tells it. */
export const say = language === 'de' ? (await import('../german')).drillTold : en;
