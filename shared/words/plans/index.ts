import { language } from '../language';
import { en } from './en';

/** Plans that hold a tank, how to mix and dose them, and how to get there. */
export const say = language === 'de' ? (await import('../german')).plans : en;
