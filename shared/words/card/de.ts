import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Dosierkarte',
  of: (tank) => `Dosierkarte · ${tank}`,
  fileTitle: (tank, date) => `Dosierkarte, ${tank}, ${date}`,
  print: 'Karte drucken',
  save: 'Karte als Datei speichern',
  paper: 'Papier',
  letter: 'Letter',
  wall: 'Blatt für die Wand, für Ausfälle',
  putAway: 'Karte weglegen',
  about: (date, litres, plan) => `${date} · ${litres} L netto · ${plan}`,
  hold: 'Halten:',
  inside: (low, high) => `, innerhalb von ${low}–${high}.`,
  test: 'Testen',
  nextTest: (date) => `Nächster Test: ${date}.`,
  testHow: (days) =>
    `Danach jede Woche, zur selben Stunde; Calcium und Magnesium einmal im Monat, wie es die meisten halten. Tragen Sie ein, was Sie messen: Dieser Plan gilt für ${days} Tage.`,
  readings: 'Messungen zum Eintragen',
  columns: { date: 'Datum', dkh: 'dKH', ph: 'pH', calcium: 'Calcium', notes: 'Was getan wurde' },
  curve: (target) => `Alkalinität nach dem Plan, sobald das Wasser bei ${target} dKH steht`,
  begin: (target) => `ab ${target}`,
  day: (day) => `Tag ${day}`,
  stop: 'Anhalten',
  care: 'Vorsicht',
  simulated: (dkh) =>
    `Aus einem simulierten Becken, das ${dkh} dKH am Tag verbraucht; eine Schätzung, keine Gewähr. Was die Tests sagen, geht vor.`,
  stops: {
    tooHigh: (dkh, ph) =>
      `Ein Test über ${dkh} dKH oder ein pH über ${ph}: alle Dosierung anhalten, auch das Mittel in der Nachfüllung (mit reinem Süßwasser füllen), und innerhalb der Stunde noch einmal testen.`,
    tooLow: (dkh) =>
      `Ein Test unter ${dkh} dKH: noch einmal testen; bestätigt er sich, eine Korrektur ausarbeiten. Nie auf einmal nachholen.`,
    tooFast: (dkh) =>
      `Die Alkalinität hat sich an einem Tag um mehr als ${dkh} dKH bewegt: anhalten, den Grund finden.`,
    salinity: (low, high) =>
      `Salzgehalt außerhalb von ${low}–${high} ppt: vor allem anderen die Nachfüllung prüfen.`,
    topOff:
      'Nachfüllung läuft durch: mit trockenen Händen den Stecker ziehen; läuft noch Wasser, hebert es, den Schlauch anheben. Dann pH, Luft und reines Süßwasser.',
    doser:
      'Eine Dosierpumpe läuft durch: ihren Stecker ziehen, dann testen; die Nachfüllung bleibt an, mit reinem Wasser, wenn sie dasselbe trug.',
    floor:
      'Nasser Boden: zuerst der Sicherungskasten, von trockenem Platz. Kein Strom: zuerst Wasser oder Luft bewegen; die Nachfüllung bleibt aus, bis der Stand normal ist. Heizer hängt: Stecker ziehen, höchstens 1 °C je Stunde.',
    bottle: (ml, minutes, high) =>
      `Nie mehr als ${ml} mL in der Karbonatflasche: Bleibt ihre Pumpe hängen, sind ${high} dKH in ${minutes} min überschritten.`,
    bottles: 'Eine von zwei Flaschen leer: auch die andere anhalten.',
    cut: (line, when) => `Kein Strom, niemand bewegt Luft: ${line} ${when} (Schätzung).`,
    dump: (ph, high) =>
      `Der ganze Nachfüllbehälter auf einmal brächte pH ${ph}, über Ihren ${high}: zwei unabhängige, geprüfte Abschaltungen an seiner Pumpe, und nie voller gefüllt, als diese Karte sagt.`,
  },
  cautions: {
    lime: 'Calciumhydroxid: schwere Augenschäden, reizt Haut und Atemwege (H315, H318, H335). Handschuhe, Schutzbrille, Staubmaske. Im Auge: sofort 15–20 Minuten spülen, Lider offen, dann zum Arzt. Verschluckt: Mund ausspülen, kein Erbrechen, Giftnotruf.',
    soda: 'Soda und Calciumchlorid reizen die Augen (H319): Schutzbrille. Calciumchlorid wird beim Lösen heiß. Die zwei Teile nie mischen, nie an derselben Stelle dosieren.',
    lye: 'Natriumhydroxid verätzt Haut und Augen (H314) und greift Metalle an (H290): Handschuhe, Schutzbrille; erste Hilfe wie bei Kalkwasserpulver. Kein Mittel für Anfänger.',
    mains: 'Netzstrom neben Salzwasser: Fehlerstromschutzschalter, Tropfschlaufe an jedem Kabel.',
    sheets:
      'Das Sicherheitsdatenblatt jedes Mittels befolgen; außer Reichweite von Kindern. Kranke Tiere: einen fischkundigen Tierarzt fragen.',
  },
};
