import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  place: 'Das Klassenbecken der Feldschule an der Quillon-Bucht',
  title: 'Lektionen',
  lead: 'Geführte Experimente mit demselben Rechenwerk wie die Werkbank, je etwa zehn Minuten: vorhersagen, hinsehen, eines verschieben, antworten und lesen, warum. Jede öffnet sich unter ihrer eigenen Adresse und druckt sich als Blatt für eine Klasse.',
  unknown: (lesson) => `Eine Lektion „${lesson}“ gibt es nicht. Diese gibt es.`,
  all: 'Alle Lektionen',
  copy: 'Link für eine Klasse kopieren',
  copied: 'Die Adresse dieser Lektion ist kopiert.',
  notCopied: (address) => `Dieser Browser lässt eine Seite nicht kopieren. Die Adresse: ${address}`,
  print: 'Blatt drucken',
  trouble: (why) => `Dieses Becken ließ sich nicht rechnen: ${why}`,
  working: 'Das Becken wird durchgerechnet …',
  predict: 'Vorhersagen',
  showWhat: 'Zeigen, was geschieht',
  chooseFirst: 'Wählen Sie zuerst eines: Was man geraten hat, behält man.',
  asPredicted: 'Wie Sie vorhergesagt haben',
  notAsPredicted: 'Anders, als Sie vorhergesagt haben',
  move: 'Eines verschieben',
  question: 'Frage',
  showAnswer: 'Antwort zeigen',
  why: 'Warum',
  assumes: (what) => `Angenommen: ${what}`,
  openOnBench: 'Dieses Becken auf der Werkbank öffnen',
  next: (lesson) => `Weiter: ${lesson}`,
  opening:
    'Das Öffnen setzt dieses Becken an die Stelle dessen, was auf der Werkbank liegt; „Rückgängig“ bringt Ihres zurück.',
  runs: { begin: 'zuerst', predicted: 'dann', now: 'Ihres' },
  skeleton: 'Abgelagertes Skelett',
  units: { perHour: 'je Stunde', hours: 'Stunden', days: 'Tage', aDay: ' am Tag' },
  sheet: {
    kind: (lesson) =>
      `Paper Reef · Lektion für eine Klasse · etwa zehn Minuten · #lessons/${lesson}`,
    because: 'Weil',
    try: 'Ausprobieren',
    whatISaw: 'Was ich gesehen habe',
    answer: 'Antworten',
    forTheTeacher: 'Für die Lehrkraft',
    prediction: 'Vorhersage.',
    answered: 'Antwort.',
  },
};
