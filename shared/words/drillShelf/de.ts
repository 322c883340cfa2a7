import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  'drill-doser-stuck': {
    title: 'Eine Dosierpumpe bleibt an',
    question:
      'Wie weit trägt eine hängende Karbonatpumpe die Alkalinität, bevor ihre Flasche leer ist?',
  },
  'drill-empty-reservoir': {
    title: 'Niemand füllt den Behälter über ein langes Wochenende',
    question:
      'Wie schnell verlassen Salzgehalt und Alkalinität ihren Bereich, wenn die Nachfüllung steht?',
  },
  'drill-power-cut': {
    title: 'Ein Stromausfall in einer Sturmnacht',
    question:
      'Was machen zwölf Stunden ohne Pumpen mit dem pH, und die Rückkehr von allem auf einmal?',
  },
  'drill-second-switch': {
    title: 'Ein zweiter Schalter fängt die hängende Pumpe',
    question: 'Was lässt ein zweiter Schwimmerschalter von demselben Ausfall übrig?',
  },
  'drill-strong-mix': {
    title: 'Der Bodensatz des Behälters wird aufgerührt',
    question: 'Der Bodensatz wird aus Versehen aufgerührt: Was geht mit dem Wasser hinein?',
  },
  'drill-stuck-pump': {
    title: 'Die Nachfüllpumpe bleibt um zwei Uhr morgens an',
    question: 'Wann überschreitet der pH 8,6 und 9,0, und wann ist der Behälter leer?',
  },
  'drill-wrong-water': {
    title: 'Frisches Salz zu schwach angesetzt, und der Raum verschlossen',
    question:
      'Ein Wasserwechsel mit falschem Salzgehalt, während das CO₂ des Raums steigt: Welche Grenze fällt zuerst?',
  },
};
