import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  scenario: {
    title: 'Titel',
    place: 'Ort',
    question: 'Frage',
    answer: 'Antwort, die es geben soll',
    days: { title: 'Dauer des Versuchs' },
    dosers: 'Dosierpumpen',
    additions: 'Zugaben',
    faults: 'Fehler',
    responses: 'Gegenmaßnahmen',
  },
  measured: {
    salinity:
      'Leitfähigkeitsmessgerät oder Refraktometer, mit einem 35-ppt-Standard geprüft. Das spezifische Gewicht gilt hier für 25/25: 35 ppt sind 1,0264. Eine Spindel für 60 °F zeigt in diesem Wasser bei 25 °C 1,0244, eine für 20/20 °C 1,0266.',
    alkalinity: 'Alkalinitätstest, jedes Mal zur selben Uhrzeit.',
    readsLikeGravity: (typed: string, salinity: string) =>
      `${typed} sieht nach einem spezifischen Gewicht (25/25) aus; als Salzgehalt sind das ${salinity}`,
  },
  tank: {
    title: 'Becken',
    help: 'Das Wasser in der ersten Stunde.',
    volumeL: {
      title: 'Netto-Wasservolumen',
      help: 'Becken, Technikbecken und Rohre, ohne Gestein und Sand.',
      measure:
        'Nicht das Nennvolumen: Geben Sie eine abgewogene Menge Salz zu und lesen Sie den Anstieg des Salzgehalts ab, oder messen Sie mit dem Maßband und ziehen Sie das Gestein ab.',
    },
    alkalinityDkh: 'Alkalinität',
    calciumMgPerL: 'Calcium',
    magnesiumMgPerL: 'Magnesium',
    salinityPractical: 'Salzgehalt',
    tempC: { title: 'Temperatur' },
    nitrateMgPerL: { title: 'Nitrat' },
    phosphateMgPerL: { title: 'Phosphat' },
    ammoniaMgPerL: {
      title: 'Gesamtammonium',
      help: 'NH₃ und NH₄⁺ zusammen, als Ammoniak (NH₃) gerechnet.',
    },
  },
  start: {
    title: 'Wie der Versuch beginnt',
    help: 'Was den pH-Wert in der ersten Stunde bestimmt.',
    carbon: {
      title: 'pH-Wert zu Beginn',
      help: 'Der eingeschwungene Tagesgang dieses Plans, das Gleichgewicht mit der Raumluft oder ein gemessener pH-Wert.',
    },
    phNbs: {
      title: 'Gemessener pH-Wert zu Beginn',
      help: 'Wie ihn eine Aquaristiksonde anzeigt (NBS-Skala). Zählt nur, wenn der Versuch mit einem gemessenen pH-Wert beginnt.',
    },
    omegaReference: {
      title: 'Sättigung, zu der der eingetippte Verbrauch gehört',
      help: '0 bedeutet das Mittel des ersten Tages dieses Versuchs. Ein Versuch, der mit dem Wasser eines anderen Plans beginnt, übernimmt dessen Wert.',
    },
    clockHour: {
      title: 'Uhrzeit zu Beginn',
      help: 'Stunde des Tages, in der der Versuch beginnt.',
    },
  },
};
