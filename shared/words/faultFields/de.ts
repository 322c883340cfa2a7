import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  window: {
    day: { title: 'An Tag' },
    hour: { title: 'Um' },
  },
  fault: {
    title: 'Fehler',
    help: 'Eine Eigenschaft eines Geräts über eine Zeitspanne.',
    kind: { title: 'Was ausfällt' },
    endsAfterH: {
      title: 'Bemerkt nach',
      help: 'Dann endet der Fehler.',
    },
    secondSwitch: {
      title: 'Zweiter Schalter',
      help: 'Ein verschweißtes Relais umgeht ihn, wenn er nicht die Netzspannung trennt.',
    },
    runLimit: {
      title: 'Laufzeitgrenze',
      help: 'In der Steuerung nützt sie nichts, wenn das Relais klebt.',
    },
    sensorLowL: { title: 'Stand wird zu niedrig gelesen um' },
    litresPerH: { title: 'Saugheber' },
    times: { title: 'Mal so viel wie gewollt' },
    pump: { title: 'Nummer der Dosierpumpe' },
    newWaterSalinity: 'Neues Wasser angesetzt auf',
    newWaterDkh: 'Neues Wasser ergibt',
    endTempC: { title: 'Temperatur, auf die es geht' },
    degreesPerH: { title: 'Wie schnell' },
    cooling: {
      title: 'Nähert sich der Raumtemperatur',
      help: 'nein: Die Temperatur bleibt. geschätzt: die Zeit, die Wasser und Glas eines solchen Beckens brauchen, aus Volumen und Oberfläche (Schätzung). eigene: mit den Stunden darunter. Die Raumtemperatur ist die von „Verdunstung im Einzelnen“.',
    },
    coolingHours: {
      title: 'Zeitkonstante, falls eigene',
      help: 'Nach so langer Zeit sind zwei Drittel des Weges zurückgelegt.',
      measure: 'Heizer zwei Stunden aus: Stunden × Grad bis zum Raum ÷ verlorene Grad.',
    },
    gasPercent: {
      title: 'Gasaustausch, der bleibt',
      help: 'Eine stille Oberfläche tauscht ein wenig aus (gängige Praxis: 5–10 %).',
    },
    co2Ppm: { title: 'CO₂ im Raum, auf das es geht' },
    riseHours: { title: 'Steigt über' },
    additive: { title: 'Stoff' },
    grams: { title: 'Menge' },
  },
  response: {
    title: 'Gegenmaßnahme',
    help: 'Was gegen einen Fehler unternommen wird.',
    kind: { title: 'Was getan wird' },
    hours: { title: 'Über' },
    kLaPerH: { title: 'Belüftung (kLa)' },
    co2Ppm: { title: 'CO₂ der eingeblasenen Luft' },
    co2GramsEach: {
      title: 'CO₂ in jeder Portion',
      help: 'Ein Liter stark mit Kohlensäure versetztes reines Wasser enthält etwa 6 g (gängige Praxis).',
    },
    portions: { title: 'Portionen' },
    percent: { title: 'Gewechseltes Wasser' },
  },
};
