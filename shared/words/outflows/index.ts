import { language } from '../language';
import { en } from './en';

/** What is asked of losses and of a media reactor. */
export const say = language === 'de' ? (await import('../german')).outflows : en;
