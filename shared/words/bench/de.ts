import type { Words } from '../words';
import type { en } from './en';

const days = (count: string) => (count === '1' ? 'Tag' : 'Tage');

export const de: Words<typeof en> = {
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  startOver: 'Von vorn',
  planOf: (name) => `Der Plan von ${name}`,
  everythingElse: 'Alles Weitere im Plan',
  example: {
    title: 'Die Lagune der Feldschule',
    question:
      'Kann Kalkwasser in der Nachfüllung sie allein halten? Ziehen Sie an „Stärke der Mischung“, und sehen Sie Versuch A an.',
  },
  verdict: {
    title: 'Urteil',
    stampInside: 'innerhalb bis zum Ende',
    stampOutside: (what, day) => `${what} außerhalb ab Tag ${day}`,
    stampStops: (day) => `endet an Tag ${day}`,
    why: 'Warum, und was sonst bekannt ist',
    beingWorkedOut: 'wird gerade gerechnet …',
    couldNotRun: (name, why) =>
      `${name} konnte so, wie er jetzt steht, nicht gerechnet werden: ${why}`,
    lastGoodRun: 'Was Sie sehen, ist seine letzte gelungene Rechnung.',
    shareDone: (name) => `${name}: gerechneter Anteil des Versuchs`,
    setMix: (gramsPerL) => `Die Mischung auf ${gramsPerL} g/L stellen`,
    refillEvery: (count) => `Alle ${count} ${days(count)} auffüllen`,
  },
  plans: {
    title: 'Versuche auf der Werkbank',
    today: 'Heutiger Plan',
    trial: (letter) => `Versuch ${letter}`,
    myTank: 'Mein Becken',
    noRoomToTry: (today) =>
      `Nach „${today}“ läuft Ihr Becken: Ziehen ändert daran nichts. Wählen Sie einen Versuch, oder entfernen Sie einen, um Platz zu schaffen.`,
    unnamed: 'Versuch ohne Namen',
    remove: (name) => `${name} entfernen`,
    full: (most) => `Die Werkbank fasst ${most} Versuche; entfernen Sie erst einen.`,
    keep: 'Behalten und einen weiteren probieren',
    name: 'Name',
  },
  runsBy: {
    neverSaid: (today) =>
      `Messbuch und Karte richten sich nach „${today}“, den Sie noch nicht Ihren genannt haben: Stellen Sie einen Versuch so ein, wie Ihr Becken ist, und drücken Sie „Mein Becken läuft nach …“.`,
    since: (today, when) =>
      `Ihr Becken läuft nach „${today}“, wie er seit ${when} dasteht. Probieren ändert daran nichts.`,
    runsBy: (name) => `Mein Becken läuft nach „${name}“`,
    before: (count) => (count === 1 ? 'Ein Plan vor diesem' : `${count} Pläne vor diesem`),
    ranSince: (when) => `Ab ${when}:`,
    ranFirst: 'Zuerst:',
    asNow: 'wie jetzt',
    setting: (title, then, now) => `${title} ${then} (jetzt ${now})`,
    andMore: (count) => `und ${count} weitere`,
    again: 'Wieder nach diesem laufen',
  },
  room: {
    none: (title) =>
      `„${title}“ findet auf der Werkbank keinen Platz: Von Ihrem wird nichts ersetzt. Welcher Versuch darf weg?`,
    remove: (name) => `${name} entfernen`,
    leave: 'Keiner, weglassen',
  },
  first: {
    title: 'Ein Becken wie Ihres, in drei Antworten',
    howMuch: 'Wie viel Wasser, ohne Steine?',
    whatLives: 'Was lebt darin?',
    whatBrings: 'Was bringt jetzt Alkalinität?',
    show: 'Auf die Werkbank damit',
    skip: 'Überspringen, ich kenne mich aus',
    why: 'Zeigen, warum die Alkalinität fällt',
    soft: 'neue oder weiche Korallen',
    mixed: 'gemischte Korallen',
    stony: 'dicht mit Steinkorallen',
    none: 'noch nichts',
    noneNext:
      'Wählen Sie unter „Die Nachfüllung“ Kalkwasser, und vergleichen Sie Versuch A mit dem heutigen Plan.',
    limewater: 'Kalkwasser in der Nachfüllung',
    limewaterNext:
      'Ziehen Sie in Versuch A an „Stärke der Mischung“; proben Sie danach bei den Störfällen eine hängende Pumpe.',
    pump: 'eine Dosierpumpe mit Carbonat',
    pumpNext:
      'Stellen Sie unter „Dosierpumpen“ Ihre Flasche und Dosis ein; tragen Sie danach Ihre Tests ins Messbuch ein.',
    water: 'Wasserwechsel',
    waterNext: 'Probieren Sie in Versuch A eine andere Salzmischung oder einen größeren Wechsel.',
    tank: (volume) => `Mein Becken, ${volume}`,
    assumed: (volume, dweller) =>
      `${volume}, ${dweller}; Verdunstung, Verbrauch, Futter und Gasaustausch sind angenommen (übliche Praxis)`,
    untilMeasured: (evaporates, used, next) =>
      `${evaporates} am Tag verdunsten und ${used} am Tag werden verbraucht: Beides ist angenommen, bis Sie es messen. ${next}`,
  },
  ledger: {
    title: (day) => `Wohin die Alkalinität an Tag ${day} ging`,
    twoEquivalents:
      'Wachsende Korallen nehmen für jedes CaCO₃, das sie ablagern, zwei Äquivalente Alkalinität.',
    asTable: 'Dasselbe als Tabelle',
    fromOrTo: 'woher oder wohin',
    ofStartVolume: (unit) => `${unit} des Anfangsvolumens`,
    startOfDay: 'zu Beginn des Tages',
    endOfDay: 'am Ende des Tages',
    volume: 'weniger oder mehr Wasser',
    took: (what) => `entnommen: ${what}`,
    brought: (what) => `gebracht: ${what}`,
    asBefore: 'die Alkalinität endet, wo der Tag begann',
    falls: (by) => `die Alkalinität fällt um ${by}`,
    rises: (by) => `die Alkalinität steigt um ${by}`,
    nothing: 'Nichts hat sie bewegt',
  },
  differ: {
    title: 'Was sich unterscheidet',
    against: (name) => `${name} gegen`,
    same: 'Die beiden Pläne sind bisher gleich. Ziehen Sie an etwas.',
    settings: 'Einstellungen, die sich unterscheiden',
    setting: 'Einstellung',
    less: (name, other) => `${name} minus ${other}, für`,
    difference: 'Unterschied',
    inQuantity: (quantity) => `Unterschied: ${quantity}`,
    range: (low, high) => `${low} bis ${high}`,
    alkalinityRange: 'Alkalinität, von der niedrigsten zur höchsten',
    alkalinityEnd: 'Alkalinität am Ende',
    dailyChange: 'Größte Änderung an einem Tag',
    phRange: 'pH-Wert, vom niedrigsten zum höchsten',
    calciumEnd: 'Calcium am Ende',
    salinityEnd: 'Salzgehalt am Ende',
    whatDidIt: 'Woran lag es? Jede Änderung einzeln probieren',
    trying: 'Jede Änderung wird einzeln probiert …',
    onlyThis: (name) => `Nur dies geändert in: ${name}`,
    atTheEnd: 'Alkalinität am Ende',
    phPeak: 'höchster pH-Wert',
  },
  hours: {
    title: 'Stunde für Stunde',
    day: (name) => `${name}, der Tag am Zeitzeiger`,
    before: 'Tag davor',
    after: 'Tag danach',
    numbers: 'Zahlen des Tages',
  },
  anotherQuestion: 'Eine andere Frage kam dazwischen.',
};
