import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  notFetched:
    'was dies ausrechnet, konnte nicht geholt werden. Laden Sie die Seite neu, um es noch einmal zu versuchen.',
  tooLong: (seconds) =>
    `${seconds} Sekunden lang war nichts davon zu hören, und es wurde beendet. Fragen Sie noch einmal, oder lassen Sie weniger ausrechnen.`,
  broken: (why) =>
    `was dies ausrechnet, brach ab (${why}). Laden Sie die Seite neu, um es noch einmal zu versuchen.`,
};
