import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  outflows: {
    title: 'Verluste',
    help: 'Wasser, das mit seinem Salz hinausgeht.',
    skimmingLPerDay: { title: 'Nasses Abschäumen' },
    leakLPerDay: { title: 'Leck' },
    spareL: {
      title: 'Platz im Technikbecken vor dem Überlaufen',
      help: 'Über dem Normalstand. Was mehr ist, läuft auf den Boden.',
    },
  },
  calciumReactor: {
    title: 'Kalkreaktor',
    help: 'Kohlendioxid löst Korallenbruch; was abläuft, tropft ins Becken.',
    dripLPerH: {
      title: 'Tropfrate des Ablaufs',
      help: '0 bedeutet, es gibt keinen.',
      measure: 'Milliliter in einer Minute, mal 0,06.',
    },
    effluentDkh: { title: 'Alkalinität des Ablaufs' },
    effluentPhNbs: { title: 'pH-Wert des Ablaufs' },
  },
};
