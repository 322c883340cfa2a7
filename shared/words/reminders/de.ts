import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  take: 'In meinen Kalender',
  file: (tank) => `${tank}: nächster Test`,
  test: (tank) => `Alkalinität testen: ${tank}`,
  testWhy:
    'Zur selben Stunde wie zuletzt, und bevor etwas dosiert wird. Das Messbuch sagt, warum an diesem Tag.',
  refill: (tank) => `Nachfüllung auffüllen: ${tank}`,
  refillWhy: (litres, days) =>
    `${litres} L, ${days === 1 ? 'jeden Tag' : `alle ${days} Tage`}, wie der Plan es vorsieht, gezählt von dem Tag, an dem dies dem Messbuch entnommen wurde. Nie umrühren, solange die Pumpe laufen kann.`,
};
