import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  putRight: (fault) => `bemerkt und behoben: ${fault}`,
  passesAbove: (name, limit) => `${name}: steigt über ${limit}`,
  fallsBelow: (name, limit) => `${name}: fällt unter ${limit}`,
  atTheSoonest: (passes) => `${passes}, frühestens`,
  asSet: (passes) => `${passes}, wie eingestellt`,
  backBelow: (name, limit) => `${name}: wieder unter ${limit}`,
  backAbove: (name, limit) => `${name}: wieder über ${limit}`,
  runsDry: (ph) => `Nachfüllbehälter leer, pH ${ph}`,
  runsOver: 'das Technikbecken läuft über, Wasser auf dem Boden',
  warms: (perH, to) =>
    `Gerechnet mit ${perH} °C je Stunde bis auf ${to}, wie der Ausfall eingestellt ist: Stellen Sie ein, was Ihr Thermometer zeigt.`,
  cools: (perH, to) =>
    `Gerechnet mit ${perH} °C je Stunde bis hinab auf ${to}, wie der Ausfall eingestellt ist: Stellen Sie ein, was Ihr Thermometer zeigt.`,
  pouredIn: (grams, additive) =>
    `Gerechnet mit ${grams} g ${additive}, wie der Ausfall eingestellt ist: Stellen Sie ein, was es war und wie viel.`,
  stopsBefore: 'Der Versuch endet, bevor etwas ausfällt: Es gibt keinen Störfall zu erzählen.',
  worstHour: (worst, worstClock, clock, set) =>
    `Um ${worstClock}, der schlimmsten Stunde des Tages, erreichte der pH höchstens ${worst}. Um ${clock}, wie eingestellt: ${set}`,
  also: (sides) => `Neben dem pH: ${sides}.`,
  oxygen: {
    first: (lines) => `Der Sauerstoff geht zuerst aus: ${lines}.`,
    below: (limit, span) => `unter ${limit} mg/L nach ${span}`,
    and: ', ',
    between: (from, to) => `${from} bis ${to}`,
    onlyClosed: (span) =>
      `${span}, wenn keine Luft an die Oberfläche kommt und mehr geatmet wird (mit dem eingestellten Gasaustausch und weniger Atmung gar nicht)`,
    already: (limit) => `Der Sauerstoff liegt unter Ihren ${limit} mg/L, bevor etwas ausfällt.`,
    kept: (limit, lowest) =>
      `Der Sauerstoff bleibt über Ihren ${limit} mg/L; sein tiefster Wert ist ${lowest}.`,
    sooner: (clock, span) => `Um ${clock} begonnen, wäre es nach ${span}.`,
    soonerAsSet: (clock, span) =>
      `Um ${clock} begonnen, wäre die Zeit mit Luft und Atmung wie eingestellt ${span}.`,
    breathed: (mgPerLPerH, how) =>
      `Das mit ${mgPerLPerH} mg/L je Stunde, die veratmet werden, ${how}.`,
    unmeasured: 'Was veratmet wird, ist angenommen: Niemand hat es gemessen.',
    typed: 'wie von Ihnen eingegeben',
    assumed: 'aus gebundenem Kohlenstoff, Futter und dem Wort für den Besatz',
    twoTimes:
      'Wo zwei Zeiten stehen, gilt die kürzere ganz ohne Luft an der Oberfläche und mit mehr Atmung, die längere mit dem eingestellten Gasaustausch und weniger Atmung.',
    before: 'Bewegen Sie Wasser oder Luft, bevor Sie rechnen.',
    warmth: (times) =>
      `Warmes Wasser hält weniger Sauerstoff, und was darin lebt, atmet schneller: ${times}-mal so viel, wo es 10 °C wärmer ist (gängige Praxis, von Ihnen zu ändern).`,
    howLong: (limit, span) => `Bis der Sauerstoff unter ${limit} mg/L liegt: ${span}.`,
  },
  leftAlone: {
    empty: (clock, ph) =>
      `Bemerkt es niemand, ist der Nachfüllbehälter um ${clock} leer, und der pH erreicht höchstens ${ph}.`,
    peak: (ph, clock) => `Bemerkt es niemand, erreicht der pH ${ph} um ${clock}.`,
  },
  chalk: {
    above: (ph, harm, span) =>
      `All das ohne ausfallenden Kalk, dessen Augenblick niemand vorhersagen kann. Fiele er sofort, erreichte der pH höchstens ${ph} und läge ${span} lang über ${harm} (Veranschaulichung).`,
    below: (ph, harm) =>
      `All das ohne ausfallenden Kalk, dessen Augenblick niemand vorhersagen kann. Fiele er sofort, erreichte der pH höchstens ${ph}, unter ${harm} (Veranschaulichung).`,
  },
  allInside: (ph) =>
    `Alles, was beobachtet wird, bleibt innerhalb Ihrer Grenzen; der pH erreicht höchstens ${ph}.`,
  nothingMore: (ph) =>
    `Durch den Störfall verlässt nichts Beobachtetes Ihre Grenzen, was sie nicht ohnehin verließe; der pH erreicht höchstens ${ph}.`,
  withoutItToo: (sides) => `Nicht wegen des Störfalls: ${sides}.`,
  phNotAboveBut: (ph, high, sides) =>
    `${sides}. Der pH erreicht höchstens ${ph}, nicht über Ihren ${high}.`,
  goesAbove: (name, limit) => `${name} über ${limit}`,
  goesBelow: (name, limit) => `${name} unter ${limit}`,
  phBelowHarm: (ph, harm, high, span) =>
    `Der pH erreicht höchstens ${ph}; er bleibt unter ${harm} und liegt ${span} lang über Ihren ${high}.`,
  phBelowHarmNotBack: (ph, harm, high, span) =>
    `Der pH erreicht höchstens ${ph}; er bleibt unter ${harm}, liegt ${span} lang über Ihren ${high} und kehrt während des Störfalls nicht zurück.`,
  phAbove: (ph, high, span) => `Der pH erreicht ${ph} und liegt ${span} lang über Ihren ${high}.`,
  phAboveNotBack: (ph, high, span) =>
    `Der pH erreicht ${ph}, liegt ${span} lang über Ihren ${high} und kehrt während des Störfalls nicht zurück.`,
  phAboveHarm: (ph, harm, harmSpan, high, span) =>
    `Der pH erreicht höchstens ${ph}; er liegt ${harmSpan} lang über ${harm} und ${span} lang über Ihren ${high}.`,
  phAboveHarmNotBack: (ph, harm, harmSpan, high, span) =>
    `Der pH erreicht höchstens ${ph}; er liegt ${harmSpan} lang über ${harm} und ${span} lang über Ihren ${high} und kehrt während des Störfalls nicht zurück.`,
};
