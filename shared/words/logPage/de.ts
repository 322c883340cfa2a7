import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  judged: {
    sentence: (dkh, expected, by, judgement) =>
      `${dkh}, erwartet waren ${expected} ± ${by}: ${judgement}.`,
    withinNoise: 'im Rauschen',
    lower: 'niedriger, als das Rauschen es meist macht: noch einmal testen',
    higher: 'höher, als das Rauschen es meist macht: noch einmal testen',
    farBelow:
      'weit unter dem, was das Rauschen erklärt: noch einmal testen, bevor Sie etwas unternehmen',
    farAbove:
      'weit über dem, was das Rauschen erklärt: noch einmal testen, bevor Sie etwas unternehmen',
  },
  monthOf: 'Im Monat zeigen',
  stretch: {
    month: 'Monat',
    quarter: 'Quartal',
    all: 'Alles',
    at: (when, what) => `${when}: ${what}`,
  },
  places: {
    label: 'Teile des Messbuchs',
    lines: 'Das Messbuch',
    plan: 'Pläne',
    away: 'Verreist',
    season: 'Saison',
    stock: 'Vorrat',
    read: 'Wie es gelesen wird',
  },
  enter: {
    title: 'Eine neue Messung',
    add: 'Ins Messbuch',
    again: (dose) => `Noch einmal ${dose}`,
    leave: 'Lassen',
    more: 'Andere Zeit, andere Messwerte, eine Dosis, ein Wasserwechsel',
    timeIsNow: 'Leer gelassen gilt die jetzige Zeit.',
    several: 'Mehrere auf einmal?',
    pasteThem: 'Mehrere Zeilen einfügen',
    knownAlready: 'Genau diese Zeile steht schon im Messbuch; nichts wurde hinzugefügt.',
    taken: (time) => `Übernommen, ${time}.`,
    onlyDigits: 'Ziffern und ein Dezimalzeichen',
    lotAlone:
      'Eine Flasche allein ist keine Zeile im Messbuch: Ihre Charge gehört zum nächsten Messwert der Alkalinität, geben Sie ihn daneben ein.',
    nothingTyped:
      'Noch steht nichts da: Geben Sie einen Messwert, eine Dosis, einen Wasserwechsel oder eine Notiz ein.',
    equipmentAlone:
      'Sagen Sie, was damit geschah: gekauft, gereinigt, ersetzt, kalibriert, gefüllt.',
    halfADose: 'Eine Dosis braucht beides: was hineingegeben wurde und wie viele Gramm.',
    nothingPoured: 'nichts',
    unitOf: (field) => `Einheit: ${field}`,
  },
  settingHelp: {
    withinDkhPerDay: 'Bei zwei Standardfehlern: neunzehn von zwanzig Malen.',
    scoopG: '0: alles abwiegen. Pulver sind verschieden: Wiegen Sie zehn Löffel von Ihrem.',
    pumpMlPerMin: '0: die Pumpe in mL am Tag einstellen.',
  },
  help: {
    at: 'Die Uhr neben dem Becken, ohne Zeitzone.',
    phNbs:
      'Wie die Sonde anzeigt (NBS). Kurz vor Licht an und kurz vor Licht aus sagt es am meisten.',
    accuracyDkh: (dkh) =>
      `Leer gelassen: ${dkh} dKH (übliche Praxis 0,1–0,2). Testen Sie dasselbe Wasser fünfmal; zwei Drittel der Ergebnisse liegen innerhalb eines σ.`,
    phosphate:
      'Wie der Test es zeigt: PO₄, oder Phosphor (PO₄-P), ein Drittel davon; „30 ppb“ sind 0,03 mg/L. Zeigt der Test nichts, tippen Sie 0.',
    grams: 'Ein Test, der mit ihr eingetippt ist, gilt als vor dem Hineingeben gemacht.',
    equipment: 'Abschäumer, Pumpe, Lampe; bei „Flasche gefüllt“ der Name der Pumpe, leer: alle.',
    coralsPercent:
      'Von allem, was Alkalinität nimmt, nach Größe, wie Sie es schätzen: −33, wenn ein Drittel verkauft wurde, 20, wenn ein Fünftel dazukam. Es zählt von diesem Augenblick an, und die Messungen danach rücken es zurecht.',
  },
  counted: {
    future: (count, when) =>
      count === 1
        ? `Die Messung vom ${when} liegt in der Zukunft und zählt nicht: Stellen Sie unten ihr Datum richtig.`
        : `${count} Messungen liegen in der Zukunft, die letzte am ${when}, und zählen nicht: Stellen Sie unten ihre Daten richtig.`,
    tooOld: (count) =>
      `${count === 1 ? 'Eine Zeile zählt' : `${count} Zeilen zählen`} nicht: Die Anpassung blickt höchstens zwei Jahre zurück.`,
    tooMany: (count) =>
      `${count === 1 ? 'Eine Zeile zählt' : `${count} Zeilen zählen`} nicht: Höchstens 20 einer Minute und 2.000 insgesamt tun es, die neuesten.`,
  },
  against: {
    plan: (dosing) => `Gelesen am heutigen Plan: ${dosing}.`,
    workedOut: 'Daraus wird errechnet, was die Korallen verbrauchen:',
    putRight: 'Stellen Sie ihn auf der Werkbank richtig',
    ifOtherwise: '– falls Ihr Becken anders läuft.',
  },
  lines: {
    undo: 'Rückgängig',
    redo: 'Wiederholen',
    empty: 'Noch nichts. Tippen Sie oben die heutige Alkalinität ein.',
    region: 'Messungen, die neueste zuerst',
    offTheFit: 'σ neben der Anpassung',
    whatElse: 'Was noch',
    change: 'Ändern',
    outlier: 'Ausreißer',
    edit: 'Ändern',
    editAt: (time) => `${time} ändern`,
    delete: 'Löschen',
    deleteAt: (time) => `${time} löschen`,
    keep: 'Änderung behalten',
    onlyLatest: 'Nur die neuesten',
    all: (count) => `Alle ${count} Zeilen`,
  },
  events: {
    bought: 'gekauft',
    cleaned: 'gereinigt',
    replaced: 'ersetzt',
    calibrated: 'Sonde kalibriert',
    reservoirFilled: 'Reservoir gefüllt',
    bottleFilled: 'Flasche gefüllt',
  },
  marks: {
    event: (what, done) => (what === '' ? done : `${what}: ${done}`),
    poured: (grams, additive) => `${grams} g ${additive}`,
    water: (percent) => `${percent} % neues Wasser`,
    corals: (percent) => `Korallen ${percent} %`,
    bottle: (lot) => (lot === '' ? 'andere Flasche' : `Flasche ${lot}`),
    turned: 'gedreht',
  },
  tanks: {
    tank: 'Becken',
    rename: 'Umbenennen',
    another: 'Weiteres Becken',
    remove: 'Dieses Becken entfernen',
    nameOfNew: 'Name des neuen Beckens',
    itsName: 'Sein Name',
    begin: 'Sein Messbuch beginnen',
    keepName: 'Namen behalten',
    leave: 'Lassen',
    unnamed: (number) => `Becken ${number}`,
    copyOfToday:
      'Es beginnt mit einer Kopie des heutigen Plans; stellen Sie sein Volumen auf der Werkbank ein.',
    sure: (name, count) =>
      `${name} mit ${count} Messungen und allen Plänen entfernen? Bis diese Seite geschlossen oder neu geladen wird, können Sie es zurückholen.`,
    yes: 'Ja, entfernen',
    no: 'Behalten',
    removed: (name) => `${name} wurde entfernt.`,
    bringBack: 'Zurückholen',
  },
};
