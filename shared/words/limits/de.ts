import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  limits: {
    title: 'Ihre Grenzen',
    help: 'Das Band, in dem Sie bleiben wollen (gängige Praxis).',
    alkalinityLowDkh: { title: 'Alkalinität, unten' },
    alkalinityHighDkh: { title: 'Alkalinität, oben' },
    alkalinityHarmDkh: {
      title: 'Alkalinität, unter der Schaden zu erwarten ist',
      help: 'Steinkorallen leiden, lange bevor 5 dKH erreicht sind (gängige Praxis).',
    },
    alkalinityChangeDkhPerDay: { title: 'Änderung der Alkalinität an einem Tag' },
    phLowNbs: { title: 'pH-Wert, unten' },
    phHighNbs: { title: 'pH-Wert, oben' },
    phHarmNbs: {
      title: 'pH-Wert, ab dem Schaden zu erwarten ist',
      help: 'Störfälle sagen, wann er überschritten wird.',
    },
    phChangePerH: { title: 'Änderung des pH-Werts in einer Stunde' },
    oxygenLowMgPerL: {
      title: 'Sauerstoff, niedrig: Zeit zu handeln',
      help: 'Unter 4 mg/L handeln (gängige Praxis).',
    },
    oxygenHarmMgPerL: {
      title: 'Sauerstoff, bei dem Schaden zu erwarten ist',
      help: 'Zu wenig für Fische und Korallen sind nach üblichem Maß 2,0–2,8 mg/L (Frontiers in Marine Science 2022, 945293, Zusammenfassung).',
    },
    unionisedAmmoniaMgPerL: {
      title: 'Freies Ammoniak, oben',
      help: '0,035 mg/L NH₃ ist die chronische Grenze der EPA 1989 für Salzwasser (aus dem Gedächtnis). Der giftige Anteil am Gesamtammonium wächst mit dem pH-Wert: Geben Sie den Messwert des Beckens ein.',
    },
    omegaHigh: {
      title: 'Sättigung (Ω), oben',
      help: 'Ab etwa 10 kann Kalk auf Oberflächen ausfallen (Veranschaulichung, keine Vorhersage).',
    },
    calciumLowMgPerL: { title: 'Calcium, unten' },
    calciumHighMgPerL: { title: 'Calcium, oben' },
    magnesiumLowMgPerL: { title: 'Magnesium, unten' },
    magnesiumHighMgPerL: { title: 'Magnesium, oben' },
    salinityLowPractical: { title: 'Salzgehalt, unten' },
    salinityHighPractical: { title: 'Salzgehalt, oben' },
    tempLowC: { title: 'Temperatur, unten' },
    tempHighC: { title: 'Temperatur, oben' },
    tempHarmC: {
      title: 'Temperatur, ab der Schaden zu erwarten ist',
      help: 'Warmes Wasser hält weniger Sauerstoff, und Korallen verlieren ihre Algen (gängige Praxis).',
    },
  },
};
