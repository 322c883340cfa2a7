import type { Words } from '../words';
import type { en } from './en';

const tagen = (count: number) => (count === 1 ? 'einem Tag' : `${count} Tagen`);

export const de: Words<typeof en> = {
  title: 'Alle Becken',
  how: 'Das Becken, nach dem am ehesten zu sehen ist, steht zuerst. „Verlässt“ nennt den Tag, bis zu dem es mit einer Wahrscheinlichkeit von eins zu zehn seine eigenen Grenzen verlassen hat.',
  all: (count) => `Alle ${count} Becken`,
  stamps: {
    working: 'wird gelesen …',
    outside: 'jetzt außerhalb',
    otherOutside: (names) => `${names} außerhalb`,
    mayHaveLeft: 'hat sie vielleicht verlassen: testen',
    leavesToday: 'verlässt sie vielleicht heute',
    leaves: (count) => `verlässt sie vielleicht in ${tagen(count)}`,
    due: 'Test fällig',
    stays: 'vier Wochen innerhalb',
    unknown: 'noch nicht bekannt',
  },
  stands: (level, use, by) => `Jetzt ${level} dKH; verbraucht ${use} ± ${by} dKH am Tag.`,
  standsAt: (level) => `Jetzt ${level} dKH; seine Messwerte sagen nicht, was es verbraucht.`,
  test: (date) => `Nächster Test bis ${date}.`,
  testDue: (date) => `Ein Test war bis ${date} fällig: jetzt testen.`,
  noReading: 'Noch keine Messung.',
  open: 'Sein Messbuch öffnen',
  month: 'Ein Monat, alle Becken',
  monthOf: (count, from, to) =>
    `Alkalinität von ${count} Becken, vom ${from} bis ${to}: wie angepasst, dann wie vorhergesagt.`,
};
