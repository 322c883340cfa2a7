import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  topOff: {
    title: 'Nachfüllung',
    help: 'Ersetzt, was verdunstet, und kann einen Zusatz tragen.',
    reservoirL: {
      title: 'Nachfüllbehälter',
      help: '0 bedeutet gar keine Nachfüllung.',
    },
    additive: { title: 'Darin gelöst' },
    gramsPerL: {
      title: 'Stärke der Mischung',
      help: 'Bei jedem Auffüllen eingewogen. Calciumhydroxid über der Sättigung bleibt am Boden und dient der nächsten Füllung.',
      measure: 'Küchenwaage; ein gestrichener Teelöffel ist geraten.',
    },
    settledG: {
      title: 'Ungelöstes Pulver zu Beginn',
      help: 'Calciumhydroxid am Boden des Behälters; es hält die Füllungen gesättigt, solange es reicht.',
    },
    saturationPercent: {
      title: 'Stärke von Kalkwasser bei Sättigung',
      help: '100 % sind 1,50 g/L bei 25 °C; Handbücher weichen um 10 % voneinander ab.',
    },
    pumpLPerH: {
      title: 'Nachfüllpumpe',
      measure: 'Sekunden, um einen Literkrug zu füllen: 3600 geteilt durch diese Zahl.',
    },
    deadBandL: {
      title: 'Abfall, der die Pumpe einschaltet',
      help: 'Schaltabstand des Niveausensors, als Volumen.',
    },
    refillEveryDays: {
      title: 'Aufgefüllt alle',
      help: '0 bedeutet nie: So sehen Sie, wie lange er reicht.',
    },
    refillHour: { title: 'Aufgefüllt um' },
    lossPercentPerDay: {
      title: 'Kalkwasser, das an die Luft verloren geht',
      help: 'CO₂ macht aus Kalkwasser Kalk: etwa 0,5 unter einem Deckel (0–2), 5 in einem offenen Behälter (2–13).',
    },
    secondSwitchL: {
      title: 'Zweiter Schalter, über Normalstand',
      help: 'Schaltet die Pumpe bei so viel zu viel Wasser ab; 0 bedeutet, es gibt keinen.',
    },
    runLimitMinPerH: {
      title: 'Laufzeitgrenze je Stunde',
      help: '0 bedeutet keine.',
    },
    runLimitMinPerDay: {
      title: 'Laufzeitgrenze je Tag',
      help: '0 bedeutet keine.',
    },
    siphonLPerH: {
      title: 'Saugheber nach dem Stopp der Pumpe',
      help: 'Ein Auslass unter dem Wasserspiegel des Behälters läuft weiter; eine Heberunterbrechung macht daraus 0.',
    },
  },
  ingredient: {
    title: 'Bestandteil',
    additive: { title: 'Stoff' },
    gramsPerL: { title: 'Stärke' },
  },
  schedule: {
    title: 'Zeitplan',
    help: 'Wann am Tag die Dosis zugegeben wird.',
    way: {
      title: 'Dosiert',
      help: 'gleichmäßiges Tropfen; so viele Dosen am Tag; eine Dosis alle so viele Minuten.',
    },
    fromHour: { title: 'ab' },
    hours: { title: 'über' },
    doses: { title: 'Dosen in dieser Zeit' },
    everyMinutes: { title: 'Alle' },
    pumpMlPerMin: { title: 'Pumpe' },
    weekdays: {
      title: 'Nur am',
      help: 'Leer bedeutet jeden Tag. Der Versuch beginnt an einem Montag.',
    },
  },
  doser: {
    title: 'Dosierpumpe',
    help: 'Eine Flasche, eine Pumpe.',
    name: 'Name',
    recipe: { title: 'Rezept der Stammlösung' },
    mlPerDay: {
      title: 'Dosis',
      measure:
        'Lassen Sie die Pumpe mit der Einstellung für einen Tag in einen Messzylinder laufen.',
    },
    stockL: { title: 'Flasche' },
  },
  saltMix: {
    title: 'Salzmischung',
    help: 'Was das neue Wasser enthält, wenn es auf den genannten Salzgehalt angesetzt ist.',
    name: 'Name',
    alkalinityDkh: 'Alkalinität',
    calciumMgPerL: 'Calcium',
    magnesiumMgPerL: 'Magnesium',
    atSalinityPractical: 'Angegeben bei Salzgehalt',
  },
  waterChanges: {
    title: 'Wasserwechsel',
    help: 'Eine Menge hinaus, dasselbe Volumen neues Wasser hinein.',
    percent: { title: 'Jeder Wechsel' },
    everyDays: { title: 'Alle' },
    hour: { title: 'Um' },
    continuousLPerDay: {
      title: 'Fortlaufender Wechsel',
      help: 'Den ganzen Tag so viel neues Wasser hinein wie altes hinaus.',
    },
    newWater: {
      title: 'Neues Wasser ist',
      help: 'belüftet: im Gleichgewicht mit der Raumluft; frisch: mit dem unten gesetzten pH-Wert.',
    },
    freshPhNbs: { title: 'pH-Wert der frischen Mischung' },
    newWaterTempC: { title: 'Temperatur des neuen Wassers' },
    salinityPractical: 'Angesetzt auf Salzgehalt',
  },
  addition: {
    title: 'Einmalige Zugabe',
    help: 'Gelöst und auf einmal hineingegeben.',
    day: { title: 'An Tag' },
    hour: { title: 'Um' },
    additive: { title: 'Stoff' },
    grams: { title: 'Menge' },
  },
};
