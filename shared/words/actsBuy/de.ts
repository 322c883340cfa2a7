import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  above: (name, limit) => `${name} über ${limit}`,
  below: (name, limit) => `${name} unter ${limit}`,
  after: (span) => `nach ${span}`,
  between: (from, to) => `nach ${from} bis ${to}`,
  orNever: (span) => `frühestens nach ${span}, oder gar nicht`,
  first: (lines) => `Sich selbst überlassen: ${lines}.`,
  nothingPassed: (span) =>
    `Sich selbst überlassen geht dadurch innerhalb von ${span} nichts von Alkalinität, pH-Wert, Kalzium, Magnesium, Salzgehalt, Temperatur, Sauerstoff, Ammoniak und Stand im Technikbecken über Ihre Grenzen. Was Sie an den Tieren sehen, geht jeder Zahl vor.`,
  noticed: (span) =>
    `Was ein Handgriff bringt, gilt, wenn damit beim Bemerken begonnen wird, nach ${span}.`,
  reckoning: 'Berechnet, was jeder Handgriff bringt …',
  names: {
    batteryAir: (litres) => `Batterie-Luftpumpe, ${litres} L Luft je Minute`,
    scoop: (litres) => `Schöpfen und Gießen, ${litres} L je Minute`,
    carbonatedWater: (count, litres) =>
      `Reines Wasser mit Kohlensäure, ${count} × ${litres} L, im Abstand einer Stunde, vor jedem den pH-Wert gemessen`,
    putRight: 'Beim Bemerken behoben',
  },
  gained: {
    upTo: (most) => `bis zu ${most}`,
    between: (least, most) => `${least} bis ${most}`,
    orMore: (least) => `${least} oder mehr`,
  },
  laterBy: (line, after, before, gained) =>
    `${gained} gewonnen: ${line} ${after}; ohne das ${before}`,
  kept: (line, span, before) => `${line} nicht innerhalb von ${span}; ohne das ${before}`,
  asSetToo: (worstOff, asSet) => `${worstOff} (${asSet} wie eingestellt)`,
  lower: (name, without, withIt) =>
    `${name}: zu dieser Stunde begonnen im Becken, das am schlechtesten dran ist, ohne das bis ${without}; damit bis ${withIt}`,
  shorter: (line, withIt, without) =>
    `${line} für ${withIt} im Becken, wie es eingestellt ist; ohne das für ${without}`,
  shorterElsewhere: (line, withIt, without) =>
    `${line} für ${withIt} in einem Becken, das dieses sein kann; ohne das für ${without}`,
  nothing: (line) =>
    `ändert hier wenig an dem, was beobachtet wurde: ${line} kommt und geht wie ohne`,
  stops: (line, span) =>
    `hält zurück, was noch nicht hineingelaufen ist: je früher, desto mehr. Nach ${span} begonnen, wie hier, kommt es für eines zu spät: ${line} kommt und geht wie ohne`,
  little: (line, withIt) =>
    `ändert in diesem Becken wenig: ${line} ${withIt}, wie ohne, so genau es angegeben wird`,
  practice: '; gängige Praxis verlangt es trotzdem',
  practiceAir: '; gängige Praxis verlangt es trotzdem, für den Sauerstoff',
  costs: (line, withIt, without) => `; aber ${line} nach ${withIt} statt ${without}`,
  costsLittle: (line) => `; aber ${line} ein wenig früher`,
  costsNew: (line, withIt) => `; aber ${line} nach ${withIt}`,
  withheld: 'Weggelassen, weil es diesen Ausfall schlimmer machte:',
  range:
    'Vom Becken, das am schlechtesten dran ist, bis zu dem, das am besten dran ist, unter denen, die Ihres sein können.',
  estimate:
    'Von Hand bewegte Luft ist eine Schätzung (die Hälfte davon, wo die kurze Zeit steht): was auf der Schachtel der Pumpe steht, geteilt durch ihre Becken.',
  airLPerMin: 'Batterie-Luftpumpe',
  scoopLPerMin: 'Schöpfen und Gießen',
};
