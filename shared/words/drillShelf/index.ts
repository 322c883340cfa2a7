import { language } from '../language';
import { en } from './en';

/** The drills that come with Paper Reef, by the names of their files. */
export const say = language === 'de' ? (await import('../german')).drillShelf : en;
