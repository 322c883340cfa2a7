import { malAmTag } from '../timesADay';
import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  fitted: {
    use: 'Verbrauch am Anfang des Messbuchs',
    growth: 'Wachstum des Verbrauchs',
    start: 'Alkalinität am Anfang des Messbuchs',
    lnKLa: 'Gasaustausch, Logarithmus von kLa in 1/h',
    gross: 'Im Licht gebundener Kohlenstoff',
    phOffset: 'Abweichung der pH-Sonde',
    corals: (date) => `Verbrauch ab dem ${date}, gegen vorher`,
    leap: (date) => `Steht auf einmal anders, gemessen am ${date}`,
    lot: (name) => `Charge ${name} gegen die erste`,
    nameless: 'ohne Namen',
  },
  tooLittle: {
    none: 'Noch keine Alkalinitätsmessung: Ab zwei, einen Tag oder mehr auseinander, zeigt sich der Verbrauch.',
    one: 'Bisher eine Alkalinitätsmessung: Ab zwei, einen Tag oder mehr auseinander, zeigt sich der Verbrauch.',
    tooClose: (hours) =>
      `Alle Messungen liegen innerhalb von ${hours} Stunden: Eine weitere, einen Tag oder mehr nach der ersten, beginnt den Verbrauch zu zeigen.`,
    twoTests: (days, within, sigma) =>
      `Zwei Tests im Abstand von ${days} Tagen kennen ihn auf ±${within} dKH am Tag, wenn der Test um ${sigma} dKH streut (2 · σ · √2 ÷ ${within}).`,
  },
  tooLong:
    'es dauerte länger als eine halbe Minute und wurde beendet. Lassen Sie die Anpassung ab einem späteren Tag zählen, oder sehen Sie nach, ob ein Datum falsch getippt ist.',
  tooFar: (days, first, last) =>
    `Die Messungen reichen über ${days} Tage, vom ${first} bis zum ${last}; angepasst werden höchstens zwei Jahre. Ist ein Datum falsch getippt? Berichtigen Sie es im Messbuch, oder lassen Sie die Anpassung ab einem späteren Tag zählen.`,
  farAhead: (last, days) =>
    `Die neueste Messung trägt das Datum ${last}, ${days} Tage nach der vorigen, darum zählen die Messungen davor nicht. Ist das Datum falsch getippt, berichtigen Sie es im Messbuch.`,
  notConverged:
    'Kein Becken, das nach diesem Plan läuft, passt zu diesen Messungen, darum gibt es keine Zahl: Prüfen Sie Volumen, Dosierung und die Daten im Messbuch, oder lassen Sie die Anpassung ab einem späteren Tag zählen.',
  notes: {
    fewReadings: (count) =>
      `Nur ${count} Alkalinitätsmessungen: Die Linie durch sie lässt sich kaum an sich selbst prüfen.`,
    noneAtAll: 'Dieser Verbrauch lässt sich noch nicht von gar keinem unterscheiden.',
    grows: (percent, by) => `Der Verbrauch wächst um ${percent} ± ${by} % am Tag.`,
    growthUnknown:
      'Wachstum lässt sich noch nicht von gleichbleibendem Verbrauch unterscheiden: Es gilt das Wachstum Ihres Plans, auf 0,3 % am Tag genau (übliche Praxis).',
    gasUnknown: (kLa) =>
      `Der Gasaustausch ist aus diesem Messbuch nicht bekannt: Es gilt das kLa Ihres Plans von ${kLa} je Stunde. Drei oder mehr pH-Messungen, einige kurz vor Licht an und einige kurz vor Licht aus, würden es zeigen.`,
    gas: (kLa, low, high) =>
      `Gasaustausch: kLa ${kLa} je Stunde, von ${low === high ? low : `${low} bis ${high}`}.`,
    gasUntold:
      'Die pH-Messungen zeigen den Gasaustausch nicht: Es gilt der Ihres Plans, auf einen Faktor zwei genau.',
    corals: (date, noted, share, by) =>
      `Am ${date} haben Sie ${noted} % Korallen notiert: Von da an gilt der Verbrauch als ${share} ± ${by} mal so groß wie vorher.`,
    lotStep: (lot, dkh, by) =>
      `${lot}: zeigt ${dkh} ± ${by} dKH an. Dieser Sprung zählt nicht als Verbrauch.`,
    lotSame: (lot, dkh, by) =>
      `${lot}: kein Sprung, der sich vom Zufall unterscheiden lässt (${dkh} ± ${by} dKH).`,
    scatter: (times) =>
      `Die Messungen streuen ${times}-mal so weit wie ihre angegebene Genauigkeit; jedes ± hier ist entsprechend verbreitert.`,
    fasterSince: (date, dkh) =>
      `Etwa ab dem ${date} fallen die Messwerte schneller, als dieser Plan es zulässt, um etwa ${dkh} dKH am Tag: Läuft die Pumpe, ist der Vorrat gefüllt, stimmt die Mischung? Korallen ändern sich selten so schnell. Wenn Sie die Dosierung geändert haben, lassen Sie die Anpassung ab diesem Tag zählen.`,
    slowerSince: (date, dkh) =>
      `Etwa ab dem ${date} fallen die Messwerte langsamer als zuvor, um etwa ${dkh} dKH am Tag: Wurde mehr dosiert als notiert, wurden Korallen entnommen, oder geht es ihnen schlecht? Wenn Sie die Dosierung geändert haben, lassen Sie die Anpassung ab diesem Tag zählen.`,
    mostUse: (most) =>
      `Das ist mehr, als ein Plan fassen kann: Pläne rechnen mit ${most} dKH am Tag.`,
    doubts: (parts, together) =>
      `Das ± ist das der Messungen. Keine Messung prüft, was Sie eingetippt haben; liegt es so weit daneben, wie solche Zahlen es oft tun (übliche Praxis), ${parts}. Mit dem der Messungen, und doppelt genommen wie jedes ± hier, sind das ±${together} dKH am Tag.`,
    doubt: {
      volume: (by) => `verschieben 10 % am Nettovolumen den Verbrauch um ${by}`,
      evaporation: (by) => `20 % an der Verdunstung um ${by}`,
      limewater: (by) => `15 % an der Stärke des Kalkwassers um ${by}`,
      delivery: (by) => `10 % an den Pumpen um ${by}`,
    },
    oneFarOff:
      'Eine Messung liegt mehr als drei Standardfehler daneben und ist unten markiert. Nichts wurde weggelassen: Testen Sie noch einmal, oder löschen Sie, was Sie als falsch kennen.',
    farOff: (count) =>
      `${count} Messungen liegen mehr als drei Standardfehler daneben und sind unten markiert. Nichts wurde weggelassen: Testen Sie noch einmal, oder löschen Sie, was Sie als falsch kennen.`,
    alwaysHigh:
      'Ein Test, der immer um denselben Betrag zu hoch anzeigt, verändert den Verbrauch nicht; einer, der 5 % zu hoch anzeigt, macht ihn 5 % zu hoch.',
  },
  answer: {
    title: 'Was das Messbuch sagt',
    reasons: 'Wie sicher, und was daraus folgt',
    use: (dkh, by, date) => `Das Becken verbraucht ${dkh} ± ${by} dKH am Tag, Stand ${date}.`,
    useUntold: (dkh, by) =>
      `Was das Becken verbraucht, sagen diese Messungen nicht: Es wäre weniger als nichts (${dkh} ± ${by} dKH am Tag). Eine Messung stimmt nicht, oder es kam mehr hinein, als der heutige Plan und das Messbuch haben.`,
    ammonia: (total, date, toxic, ph, limit) =>
      `Von den ${total} mg/L Gesamtammoniak vom ${date} sind ${toxic} mg/L freies Ammoniak bei pH ${ph}: Das ist, was schadet, und mehr als Ihre ${limit} mg/L.`,
    ammoniaPh: (ph) => `${ph} (die Obergrenze Ihres Bereichs; gemessen hat ihn niemand)`,
    readAgain:
      'Messen Sie noch einmal, mit sauberer Küvette oder kalibrierter Sonde. Bleibt es dabei:',
    firstHour: 'die erste Stunde nach einem Ausfall',
    withTyped: (by) =>
      `Das ± des Verbrauchs kommt von den Messungen allein; sind Volumen, Verdunstung und Dosierung so ungenau eingetippt, wie sie es meist sind, ist es ± ${by}.`,
    level: (by) => `Die Messwerte steigen und fallen nicht, auf ${by} dKH am Tag genau.`,
    fall: (dkh, by) => `Die Messwerte fallen um ${dkh} ± ${by} dKH am Tag.`,
    rise: (dkh, by) => `Die Messwerte steigen um ${dkh} ± ${by} dKH am Tag.`,
    drift: (from, to, by) =>
      `Mit dem heutigen Plan geht die Alkalinität in einer Woche von ${from} auf ${to} ± ${by} dKH.`,
    habit: (doses) => `Die Vorhersage geht weiter mit ${doses}, wie Ihr Messbuch es zeigt.`,
    leapUp: (before, after, dkh) =>
      `Zwischen den Messungen vom ${before} und ${after} stieg die Alkalinität um ${dkh} dKH auf einmal, mehr als die Zeilen des Messbuchs erklären: Das zählt als Wasser, das höher steht, nicht als Verbrauch. Wurde etwas hineingegeben, tragen Sie es nach; wenn nicht, sehen Sie nach, wie weit die Flaschen gefallen sind, und messen Sie dasselbe Wasser mit einem anderen Test.`,
    leaps: (count, low, high, before, after) =>
      `${count}-mal steht die Alkalinität auf einmal anders, um ${low === high ? low : `${low} bis ${high}`} dKH, zuletzt zwischen den Messungen vom ${before} und ${after}, mehr als die Zeilen des Messbuchs erklären: Das zählt als Wasser, das höher oder tiefer steht, nicht als Verbrauch. Wird immer wieder etwas hineingegeben oder gewechselt, tragen Sie es mit seinem Tag nach: Dann geht die Vorhersage damit weiter.`,
    leapDown: (before, after, dkh) =>
      `Zwischen den Messungen vom ${before} und ${after} fiel die Alkalinität um ${dkh} dKH auf einmal, mehr als die Zeilen des Messbuchs erklären: Das zählt als Wasser, das tiefer steht, nicht als Verbrauch. Wurde Wasser gewechselt, tragen Sie es nach; Kalk an Pumpen und Heizer sagt, dass er ausgefallen ist; wenn beides nicht, messen Sie dasselbe Wasser mit einem anderen Test.`,
    habitDose: (grams, additive, days) =>
      `${grams} g ${additive} ${days === 1 ? 'am Tag' : days > 1 ? `alle ${days} Tage` : malAmTag(days)}`,
    habitChange: (percent, days) => `${percent} % neuem Wasser alle ${days} Tage`,
    newestOutside: (quantity, value, date, band) =>
      `Die neueste Messung (${quantity}), ${value} am ${date}, liegt außerhalb Ihrer ${band}.`,
    outsideNow: (band) => `Sie liegt jetzt außerhalb Ihrer ${band}.`,
    stays: (band) =>
      `Sie bleibt vier Wochen lang innerhalb Ihrer ${band}, in fast jeder Anpassung, die das Messbuch zulässt.`,
    aboutToFall: (band) => `Sie ist dabei, Ihre ${band} nach unten zu verlassen.`,
    aboutToRise: (band) => `Sie ist dabei, Ihre ${band} nach oben zu verlassen.`,
    leavesBelow: (band, percent) =>
      `Sie verlässt Ihre ${band} mit ${percent} % Wahrscheinlichkeit innerhalb von vier Wochen nach unten.`,
    leavesAbove: (band, percent) =>
      `Sie verlässt Ihre ${band} mit ${percent} % Wahrscheinlichkeit innerhalb von vier Wochen nach oben.`,
    leavesBelowBy: (band, percent, dates) =>
      `Sie verlässt Ihre ${band} mit ${percent} % Wahrscheinlichkeit innerhalb von vier Wochen nach unten: ${dates}.`,
    leavesAboveBy: (band, percent, dates) =>
      `Sie verlässt Ihre ${band} mit ${percent} % Wahrscheinlichkeit innerhalb von vier Wochen nach oben: ${dates}.`,
    oneInTen: (date) => `eins zu zehn bis zum ${date}`,
    even: (date) => `halb und halb bis zum ${date}`,
    reading: 'Das Messbuch wird gelesen …',
    trouble: (why) => `Das Messbuch ließ sich nicht anpassen: ${why}`,
    lastGood: 'Was Sie sehen, ist die letzte gelungene Anpassung.',
  },
  nextTest: {
    again:
      'Testen Sie dasselbe Wasser heute noch einmal: Die neuesten Messungen passen nicht zueinander.',
    outside:
      'Testen Sie jeden Tag, zur selben Stunde, bis die Alkalinität wieder innerhalb Ihrer Grenzen ist.',
    overdue: (date) =>
      `Bis zum ${date} war ein Test fällig: Testen Sie jetzt, bevor Sie nach diesem Messbuch etwas drehen oder dosieren.`,
    known: (wanted) =>
      `Der Verbrauch ist schon auf ${wanted} bekannt. Testen Sie wöchentlich, zur selben Stunde (übliche Praxis).`,
    on: (date, wanted) =>
      `Testen Sie das nächste Mal am ${date}, zur selben Stunde: Damit ist der Verbrauch auf ${wanted} bekannt.`,
    onOrDaily: (date, wanted, days) =>
      `Testen Sie das nächste Mal am ${date}, zur selben Stunde: Damit ist der Verbrauch auf ${wanted} bekannt; mit einem Test an jedem Tag dauert es ${days} Tage.`,
    beforeLeaving: (date) =>
      `Testen Sie das nächste Mal bis zum ${date}, zur selben Stunde: Bis dahin steht es eins zu zehn, dass die Alkalinität Ihre Grenzen verlassen hat.`,
    weekly: (date) =>
      `Testen Sie das nächste Mal am ${date}, zur selben Stunde: wöchentlich ist übliche Praxis.`,
    daily: (days, wanted) =>
      `Ein Test mehr kennt den Verbrauch nicht auf ${wanted}; ein Test an jedem Tag tut es in ${days} Tagen.`,
    notYet: (wanted) =>
      `Auch vier Wochen mit täglichen Tests würden den Verbrauch nicht auf ${wanted} kennen: Verlangen Sie weniger, oder testen Sie mit einem feineren Test.`,
    wanted: (within) => `±${within} dKH am Tag`,
  },
  table: {
    summary: 'Was das Messbuch sagt und was es nicht sagen kann',
    fitted: 'Angepasst',
    value: 'Wert',
    standardError: 'Standardfehler',
    unit: 'Einheit',
    how: 'Das simulierte Becken wird mit gewichteten kleinsten Quadraten an die Messungen angepasst; Pumpen und Nachfüllung laufen wie im heutigen Plan, einmalige Dosen und Wasserwechsel, wie Sie sie eingetragen haben. Eine weit abliegende Messung zählt wenig (Student-t), und Verbrauch und Stand dürfen von Tag zu Tag ein wenig wandern. Die Vorhersage geht mit dem heutigen Plan weiter.',
  },
  settings: {
    countsFrom: 'Die Anpassung zählt ab',
    empty: (days) =>
      `leer: die letzten ${days} Tage; setzen Sie es, wenn sich die Dosierung geändert hat`,
    standsSince: (time) =>
      `Die Vorhersage steht seit ${time}; spätere Messungen werden an ihr gemessen.`,
    again: 'Alle Messungen neu anpassen',
    letStand: 'Diese Vorhersage stehen lassen',
    straying:
      'Die letzten Messungen weichen immer zur selben Seite der Vorhersage ab: Etwas hat sich geändert.',
  },
};
