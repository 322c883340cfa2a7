import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Das Messbuch',
  fields: {
    at: 'Wann',
    alkalinityDkh: 'Alkalinität',
    calciumMgPerL: 'Calcium',
    magnesiumMgPerL: 'Magnesium',
    phNbs: 'pH',
    salinityPractical: 'Salzgehalt',
    tempC: 'Temperatur',
    nitrateMgPerL: 'Nitrat',
    ammoniaMgPerL: 'Gesamtammoniak',
    test: 'Art des Alkalinitätstests',
    accuracyDkh: 'Streuung des Alkalinitätstests, ein σ',
    lot: 'Charge des Reagenzes',
    testsLeft: 'Tests übrig in der Flasche',
    additive: 'Hineingegeben',
    grams: 'Hineingegebene Menge',
    waterChangePercent: 'Gewechseltes Wasser',
    coralsPercent: 'Korallen dazu oder heraus',
    notes: 'Notizen',
  },
  help: {
    at: 'Die Uhr neben dem Becken, ohne Zeitzone.',
    phNbs:
      'Wie die Sonde anzeigt (NBS). Kurz vor Licht an und kurz vor Licht aus sagt es am meisten.',
    accuracy: (dkh) => `Leer gelassen: ${dkh} dKH (übliche Praxis 0,1–0,2).`,
    corals:
      'Von allem, was Alkalinität nimmt, nach Größe, wie Sie es schätzen: −33, wenn ein Drittel verkauft wurde, 20, wenn ein Fünftel dazukam. Es zählt von diesem Augenblick an, und die Messungen danach rücken es zurecht.',
    measureAccuracy:
      'Testen Sie dasselbe Wasser fünfmal; zwei Drittel der Ergebnisse liegen innerhalb eines σ.',
  },
  checks: { title: 'Was geprüft ist', what: 'Was funktionieren soll', tested: 'Geprüft am' },
  supplies: {
    title: 'Was übrig ist',
    what: 'Was verbraucht wird',
    left: 'Übrig, g oder Tests',
    counted: 'Gezählt am',
  },
  settings: {
    fitFrom: 'Die Anpassung zählt ab',
    heldAt: 'Die Vorhersage steht seit',
    withinDkhPerDay: 'Den Verbrauch kennen auf ±',
    withinHelp: 'Bei zwei Standardfehlern: neunzehn von zwanzig Malen.',
    targetDkh: 'Zu haltende Alkalinität',
    scoopG: 'Ein gestrichener Löffel wiegt',
    scoopHelp: '0: alles abwiegen. Pulver sind verschieden: Wiegen Sie zehn Löffel von Ihrem.',
    pumpMlPerMin: 'Die Dosierpumpe gibt',
    pumpHelp: '0: die Pumpe in mL am Tag einstellen.',
    awayDays: 'Verreist für',
    shopDays: 'Eine Bestellung braucht',
    visitDays: 'Jemand kommt alle',
  },
};
