import { language, type Language } from './language';

/** How a language is written, beside its words. */
interface Writing {
  readonly decimal: '.' | ',';
  /** Whose dates it writes, BCP 47. */
  readonly dates: string;
  readonly capitalNouns: boolean;
}

const writings: Readonly<Record<Language, Writing>> = {
  en: { decimal: '.', dates: 'en-GB', capitalNouns: false },
  de: { decimal: ',', dates: 'de', capitalNouns: true },
};

export const writing = writings[language];
