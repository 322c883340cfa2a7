import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Vorlagen und Dateien',
  besideYours:
    'Ein Beispiel steht für sich, bis Sie etwas geändert oder eine Messung eingetragen haben. Von da an steht alles, was Sie öffnen, als weiterer Versuch neben Ihrem.',
  picturePng: 'Bild zum Teilen',
  pictureSvg: 'Dasselbe als SVG',
  openFile: 'Eine Plandatei öffnen',
  saveFile: (name) => `${name} als Datei speichern`,
  hourlyCsv: 'Stündliche Zahlen als CSV',
  notOpened: (file) => `${file} wurde nicht geöffnet; die Werkbank ist, wie sie war.`,
  notRead: (file, why) => `${file} konnte nicht gelesen werden: ${why}`,
  link: {
    copy: 'Link kopieren',
    copied: (count) =>
      `Ein Link mit allen ${count} Plänen ist kopiert. Er trägt sie in sich; nichts wird irgendwohin gesendet.`,
    cannotCopy: 'Dieser Browser lässt keine Seite kopieren. Kopieren Sie die Adresse selbst:',
    address: 'Link mit diesen Plänen',
    title: 'Ein Plan, den man Ihnen geschickt hat',
    reading: 'Der Link wird gelesen …',
    notOpened: 'Der Link wurde nicht geöffnet; Ihre Werkbank ist, wie sie war.',
    toTheBench: 'Zur Werkbank',
    holds: (count) =>
      `Er enthält ${count === '1' ? 'einen Plan' : `${count} Pläne`}. Sie sehen nur hin: Von Ihrem hat sich nichts geändert.`,
    couldNotRun: (why) => `konnte nicht gerechnet werden: ${why}`,
    add: (count) =>
      `${count === '1' ? 'Diesen Versuch' : `${count} Versuche`} auf meine Werkbank legen`,
    leave: 'Lassen, und zu meiner Werkbank',
    noRoom: (held, most) =>
      `Ihre Werkbank hält ${held} von ${most} Versuchen: Entfernen Sie dort erst einen, und öffnen Sie den Link dann noch einmal.`,
    someFit: (held, most, fitting) =>
      `Ihre Werkbank hält ${held} von ${most} Versuchen: Von diesen passen nur die ersten ${fitting}.`,
    undoTakesAway: 'Hinzugefügte Versuche stehen neben Ihren; „Rückgängig“ nimmt sie wieder weg.',
  },
  everything: {
    title: 'Alles in einer Datei',
    about:
      'Alle Becken mit ihren Plänen und Messbüchern, und wie Sie alles angezeigt haben wollen.',
    save: 'Alles speichern',
    open: 'Eine solche Datei öffnen',
    notOpened: (file) => `${file} wurde nicht geöffnet; nichts hat sich geändert.`,
    added: (added, count) => `${added} von ${count} Becken hinzugefügt; das Übrige war schon hier.`,
    unreadable: (got, expected) =>
      `Die Datei lässt sich nicht lesen: ${got}; erwartet: ${expected}. Wählen Sie eine, die „Alles speichern“ gemacht hat.`,
    tank: (number) => `Becken ${number}`,
    andMore: (count) => `Und ${count} weitere dieser Art.`,
    notOurs:
      'Die Datei enthält keine Becken von Paper Reef. Wählen Sie eine, die „Alles speichern“ gemacht hat; ein einzelner Plan wird auf der Werkbank geöffnet.',
    otherVersion: (version, ours) =>
      `Die Datei hat die Version ${version}; dieses Paper Reef liest Version ${ours}. Erneuern Sie die Seite, und versuchen Sie es noch einmal.`,
  },
  unread: {
    noTank: 'Das ist kein Becken von Paper Reef.',
    noPlans: 'Es enthält keinen Plan.',
    tooManyPlans: (held, most) =>
      `Es enthält ${held} Pläne, wo eine Werkbank Platz für ${most} hat.`,
    planWithoutName: (number) => `Plan ${number}`,
    earlierPlan: (since) => `Früherer Plan${since ? `, seit ${since}` : ''}`,
  },
  aside: {
    title: 'Beiseitegelegt',
    about:
      'Was in diesem Browser gespeichert und nicht ganz lesbar war, wie es gefunden wurde. Was lesbar war, ist in Ihren Becken.',
    of: (tank, at) => [tank || 'Becken ohne Namen', at].filter(Boolean).join(', '),
    whyUnknown: 'Eine frühere Fassung hat das beiseitegelegt und nicht notiert, warum.',
    text: 'Der Text',
    save: 'Als Datei speichern',
    forget: 'Löschen',
    sure: 'Das ist die einzige Abschrift.',
    really: 'Endgültig löschen',
    keep: 'Behalten',
  },
};
