import { language } from './language';

/** Every area in the language spoken here; undefined where that is English, which is always there. */
export const spoken = language === 'de' ? await import('./german') : undefined;
