import { language } from '../language';
import { en } from './en';

/** The test log: its fields, its lines, and how a reading is judged. */
export const say = language === 'de' ? (await import('../german')).log : en;
