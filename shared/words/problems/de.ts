import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  sentence: (where: string, what: string, got: string, expected: string, wayOut: string) =>
    `${where} (${what}): angegeben ist ${got}; erwartet wird ${expected}. ${wayOut}`,
  named: (name: string, sentence: string) => `${name}: ${sentence}`,
  nothing: 'nichts',
  missing: 'nichts: Das Feld fehlt',
  wholeFile: '(die ganze Datei)',
  anotherValue: 'ein anderer Wert',
  range: (least: string, most: string) => `eine Zahl von ${least} bis ${most}`,
  oneOf: (list: string) => `eines von ${list}`,
  kinds: { string: 'ein Text', number: 'eine Zahl', Object: 'ein Objekt', Array: 'eine Liste' },
  field: {
    give: 'Geben Sie die Zahl für Ihr Becken an.',
    leaveOut: (usual: string) => `Lassen Sie es weg, dann gilt wie üblich ${usual}.`,
    unknown: 'unbekanntes Feld',
    didYouMean: (name: string) => `Meinten Sie „${name}“?`,
    didYouMeanIn: (name: string, unit: string) => `Meinten Sie „${name}“, eine Zahl in ${unit}?`,
    removeOrCorrect: 'Entfernen Sie es oder berichtigen Sie seinen Namen.',
    plainNumber: (unit: string) =>
      `In einer Datei stehen einfache Zahlen mit Dezimalpunkt: Rechnen Sie um in ${unit} und lassen Sie die Anführungszeichen weg.`,
    aNumber: 'eine Zahl',
    add: 'Fügen Sie es hinzu.',
    change: 'Ändern Sie es in das Erwartete.',
  },
  file: {
    scenario: 'Szenariodatei',
    version: 'Version des Formats',
    versions: (last: string) => `eine ganze Zahl von 1 bis ${last}`,
    newer:
      'Die Datei stammt aus einem neueren Paper Reef: Aktualisieren Sie dieses, um sie zu öffnen.',
    neverWritten:
      'Diese Version wurde nie geschrieben; speichern Sie die Datei noch einmal aus Paper Reef.',
    kind: 'Art der Datei',
    chooseOurs: 'Wählen Sie eine Szenariodatei, die Paper Reef geschrieben hat.',
    characters: (count: string) => `${count} Zeichen`,
    atMost: (count: string) => `höchstens ${count}`,
    tooLong: 'Das ist zu lang für ein Szenario; prüfen Sie, ob es die richtige Datei ist.',
    unreadable: 'etwas Unlesbares',
    json: 'ein JSON-Text',
    mendJson:
      'JSON kennt kein NaN, keine Kommentare und kein Dezimalkomma; bessern Sie die Stelle aus, auf die die Meldung zeigt.',
  },
  together: {
    yourLimits: (quantity: string) => `Ihre Grenzen für ${quantity}`,
    lowToHigh: (low: string, high: string) => `${low} bis ${high}`,
    lowBelowHigh: 'die untere unter der oberen',
    swap: 'Tauschen Sie sie.',
    moment: (day: string, hour: string) => `Tag ${day} um ${hour} Uhr`,
    withinTrial: (days: string, hour: string) =>
      `ein Zeitpunkt im Versuch, der von ${hour} Uhr an ${days} Tage dauert`,
    moveAddition: 'Verschieben Sie die Zugabe oder verlängern Sie den Versuch.',
    move: 'Verschieben Sie den Zeitpunkt oder verlängern Sie den Versuch.',
    ofThePumps: (count: string) => `eine der ${count} Dosierpumpen des Plans`,
    addPump: 'Fügen Sie dem Plan die Pumpe hinzu oder wählen Sie einen anderen Fehler.',
    fifth: (most: string) => `höchstens ein Fünftel des Beckens, ${most} L`,
    betweenLevels: 'Geben Sie das Volumen zwischen den beiden Schaltpunkten an.',
    withoutTopOff: 'Verdunstung ohne jede Nachfüllung',
    lostIn: (litres: string, days: string) => `${litres} L in ${days} Tagen`,
    half: (most: string) => `höchstens das halbe Becken, ${most} L`,
    giveTopOff: 'Geben Sie dem Becken einen Nachfüllbehälter oder verkürzen Sie den Versuch.',
  },
  typed: {
    nothing: 'Hier steht nichts. Tippen Sie eine Zahl ein.',
    nothingIn: (unit: string) => `Hier steht nichts. Tippen Sie eine Zahl in ${unit} ein.`,
    noNumber: (typed: string) =>
      `„${typed}“ ist keine Zahl. Tippen Sie eine wie 8,5 oder 8.5 ein, auf Wunsch mit Einheit.`,
    noNumberIn: (typed: string, unit: string) =>
      `„${typed}“ ist keine Zahl in ${unit}. Tippen Sie eine wie 8,5 oder 8.5 ein, auf Wunsch mit Einheit.`,
    ambiguous: (typed: string, small: string, large: string) =>
      `„${typed}“ kann ${small} oder ${large} sein. Tippen Sie ${small} oder ${large} ein.`,
    otherUnit: (typed: string, unit: string) =>
      `„${typed}“ lässt sich nicht in ${unit} umrechnen. Tippen Sie die Zahl in ${unit} ein oder in einer anderen Einheit dieser Art.`,
    unitWhereNone: (typed: string) =>
      `„${typed}“ lässt sich nicht in eine reine Zahl umrechnen. Tippen Sie die Zahl ohne Einheit ein.`,
  },
  expression: {
    what: 'Ausdruck über die Zeit',
    wrongAt: (typed: string, character: string) => `„${typed}“, falsch bei Zeichen ${character}`,
    expected: 'ein Faktor zwischen 0 und 100 zu jeder Stunde',
    allowed: (functions: string) =>
      `Erlaubt sind Zahlen, + − * / ^, Vergleiche, day, hour, t, pi, e und ${functions}.`,
    onlyNumbers: 'Hier dürfen nur Zahlen stehen.',
    notThisKind: 'Diese Art von Ausdruck ist hier nicht erlaubt.',
    unknown: (name: string) => `„${name}“ ist hier nicht bekannt.`,
    notUsed: (operator: string) => `„${operator}“ ist hier nicht erlaubt.`,
    numbersOf: (name, wanted, got) => `„${name}“ nimmt ${wanted} Zahlen; gegeben wurden ${got}.`,
    notCalled: (name: string) => `„${name}“ darf hier nicht aufgerufen werden.`,
    tooLong: 'Das ist zu lang; kürzen Sie es.',
    unreadable: 'Ab hier ist das nicht lesbar.',
    nothing: 'Hier steht nichts. Tippen Sie 1 für keine Änderung ein.',
    outOfRange: (day: string, hour: string, value: string, most: string) =>
      `An Tag ${day}, Stunde ${hour}, ergibt das ${value}; erwartet wird 0 bis ${most}.`,
  },
  link: {
    tooLong: (length: string, most: string) =>
      `Diese Pläne ergeben einen Link von ${length} Zeichen, und über ${most} schneiden viele Programme ihn ab. Speichern Sie sie lieber als Dateien oder entfernen Sie einen Versuch.`,
    damaged:
      'Dieser Link ist beschädigt: Ein Teil fehlt oder wurde unterwegs verändert. Bitten Sie noch einmal um den ganzen Link oder um den Plan als Datei.',
    noPlans: (most: string) =>
      `Dieser Link enthält etwas anderes als Pläne: erwartet werden 1 bis ${most} Pläne, jeder mit Namen und Szenario. Bitten Sie noch einmal darum, aus Paper Reef.`,
    longer: (length: string, most: string) =>
      `Dieser Link ist ${length} Zeichen lang; erwartet werden höchstens ${most}. Bitten Sie um den Plan als Datei.`,
    newer: (version: string, own: string) =>
      `Dieser Link hat Version ${version}; dieses Paper Reef liest Version ${own}. Aktualisieren Sie Paper Reef, um ihn zu öffnen.`,
    unfoldsTooLong: (most: string) =>
      `Dieser Link entfaltet sich zu mehr als ${most} Bytes, was kein Plan braucht; er wurde nicht geöffnet.`,
  },
};
