import { language } from '../language';
import { en } from './en';

/** Names of quantities, limits, substances and units. */
export const say = language === 'de' ? (await import('../german')).quantities : en;
