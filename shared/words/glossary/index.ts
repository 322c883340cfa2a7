import { language } from '../language';
import { en } from './en';

/** Every word of the page with its sentence. */
export const say = language === 'de' ? (await import('../german')).glossary : en;
