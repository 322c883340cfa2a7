/** The languages that the page speaks; the first is the one of the doors, the files and the tests. */
export const languages = ['en', 'de'] as const;

export type Language = (typeof languages)[number];

/** Where the page remembers how its reader wants things shown, the language among them. */
export const PREFERENCES_KEY = 'paper-reef preferences';

/** What the reader chose, else what the browser speaks; where nobody reads (a worker, Node) the first. */
function wanted(): string {
  if (typeof document === 'undefined') return languages[0];
  try {
    const { language } = JSON.parse(localStorage.getItem(PREFERENCES_KEY) ?? '{}');
    if (languages.includes(language)) return language;
  } catch {
    // Storage refused, or not ours.
  }
  return navigator.language;
}

const spoken = wanted().toLowerCase();

/** The language spoken here until the page is loaded anew. */
export const language: Language =
  languages.find((known) => spoken.startsWith(known)) ?? languages[0];
