import { language } from '../language';
import { en } from './en';

/** The bench: verdict, trials, ledger, differences, hours, the first minute. */
export const say = language === 'de' ? (await import('../german')).bench : en;
