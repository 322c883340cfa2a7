import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  'beyond-limewater': {
    title: 'Mehr, als Kalkwasser trägt',
    question:
      'Gesättigtes Kalkwasser genügt nicht für 1,8 dKH am Tag. Was muss eine Zweikomponentenpumpe zugeben?',
  },
  'do-nothing': {
    title: 'Lagune, sich selbst überlassen',
    question:
      'Was geschieht in den nächsten 60 Tagen, wenn nichts dosiert und nichts gewechselt wird?',
  },
  'grow-out-near-ten': {
    title: 'Aufzucht nahe 10',
    question:
      'Lässt sich ein Aufzuchtbecken mit Kalkwasser und Hydrogencarbonat nahe 10 dKH halten, und was tut der pH-Wert?',
  },
  'limewater-holds': {
    title: 'Kalkwasser hält ein gemischtes Becken',
    question: 'Kann Kalkwasser in der Nachfüllung 0,7 dKH am Tag allein halten?',
  },
  'calcium-reactor-raceway': {
    title: 'Eine Fließrinne am Kalkreaktor',
    question: 'Kann ein Kalkreaktor 1,8 dKH am Tag tragen, und was tut sein CO₂ mit dem pH-Wert?',
  },
  'over-fed': {
    title: 'Ein überfüttertes Becken',
    question: 'Weichkorallen verbrauchen fast nichts: Warum fällt die Alkalinität trotzdem?',
  },
  'pico-tank': {
    title: 'Ein Winzling auf dem Schreibtisch',
    question: 'Wie schnell bewegt sich in 12 L alles, und genügt eine Füllung in der Woche?',
  },
  'recovery-from-six': {
    title: 'Zurück von 6,2',
    question:
      'Bei 6,2 dKH: Wie komme ich mit Hydrogencarbonat auf 8,5, ohne am Tag mehr als 0,5 dKH zu bewegen?',
  },
  'water-changes-high-salt': {
    title: 'Wasserwechsel mit alkalinitätsreichem Salz',
    question: 'Genügen 15 % in der Woche mit einem Salz hoher Alkalinität allein?',
  },
  'water-changes-low-salt': {
    title: 'Wasserwechsel mit alkalinitätsarmem Salz',
    question: 'Genügen 15 % in der Woche mit einem Salz niedriger Alkalinität allein?',
  },
  'winter-room': {
    title: 'Winter, Fenster zu',
    question:
      'Was tut ein Winter mit geschlossenen Fenstern und trockener Heizungsluft mit dem pH-Wert und mit dem, was Kalkwasser bringt?',
  },
};
