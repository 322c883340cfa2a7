import type { Words } from '../words';
import type { en } from './en';

const days = (count: string | number) => (Number(count) === 1 ? 'Tag' : 'Tage');

export const de: Words<typeof en> = {
  outside: {
    reaches: (value, day, limit) => `erreicht ${value} an Tag ${day} (Ihre Grenze: ${limit})`,
    sinks: (value, day, limit) => `sinkt auf ${value} an Tag ${day} (Ihre Grenze: ${limit})`,
    and: ' und ',
    all: (what) => `Außerhalb Ihrer Grenzen: ${what}.`,
  },
  everythingInside: (watched) =>
    `Alles, was beobachtet wird, bleibt innerhalb Ihrer Grenzen: ${watched}.`,
  harm: {
    phHarm: (limit, day) =>
      `Der pH-Wert liegt ab Tag ${day} über ${limit}: Dort sind Schäden an Fischen und Korallen zu erwarten.`,
    alkalinityHarm: (limit, day) =>
      `Die Alkalinität liegt ab Tag ${day} unter ${limit}: Dort leiden Steinkorallen voraussichtlich und wachsen nicht nur langsamer (gängige Praxis).`,
    oxygenHarm: (limit, day) =>
      `Der Sauerstoff liegt ab Tag ${day} unter ${limit}: Dort sind Schäden an Fischen und Korallen zu erwarten (Frontiers in Marine Science 2022, Zusammenfassung).`,
    temperatureHarm: (limit, day) =>
      `Das Wasser ist ab Tag ${day} wärmer als ${limit}: Dort sind Schäden zu erwarten (gängige Praxis), und warmes Wasser hält weniger Sauerstoff.`,
  },
  tooFast: (change, day, limit) =>
    `Die Alkalinität ändert sich um ${change} innerhalb eines Tages (Tag ${day}); Ihre Grenze ist ${limit}.`,
  nothingDissolved:
    'In der Nachfüllung ist noch nichts gelöst: Stellen Sie „Stärke der Mischung“ ein.',
  noCycle:
    'Dieser Plan hat keinen gleichbleibenden Tagesgang: CO₂ entweicht schneller, als der Raum es bringt. Der Versuch beginnt stattdessen im Gleichgewicht mit dem Raum.',
  fromDay: (day, what) => `Ab Tag ${day}: ${what}.`,
  pumpTooSlow: (name, wanted, given) =>
    `„${name}“ ist für ihre Stunden zu langsam: Von ${wanted} mL am Tag gibt sie ${given}. Geben Sie ihr mehr Stunden, oder messen Sie ihre Förderung.`,
  foodTakesMore: (used, typed) =>
    `Futter und Nitrat allein nehmen ${used} am Tag, mehr als der eingetippte Verbrauch von ${typed}: Korallen nehmen in diesem Versuch nichts. Tippen Sie ein, was die Tests zeigen, oder füttern Sie weniger.`,
  slowing: (last, unit, first) =>
    `Korallen wachsen langsamer, wenn die Sättigung sinkt: Das Becken verbraucht am Ende ${last} ${unit} am Tag, zu Beginn ${first}.`,
  climbing: (first, last, unit) => `Der Verbrauch steigt von ${first} auf ${last} ${unit} am Tag.`,
  limewater: {
    restIsBrought: (rest) => `Ihre Pumpen und Wasserwechsel bringen die übrigen ${rest}.`,
    restIsMissing: (missing, sodaAshG) =>
      `weitere ${missing} müssen anderswoher kommen, zum Beispiel aus ${sodaAshG} g Soda am Tag mit dem Calcium dazu.`,
    restIsPartlyMissing: (missing, dosed, sodaAshG) =>
      `weitere ${missing} neben den dosierten ${dosed} müssen anderswoher kommen, zum Beispiel aus ${sodaAshG} g Soda am Tag mit dem Calcium dazu.`,
    carries: (litres, carried, used, rest) =>
      `${litres} gesättigtes Kalkwasser am Tag tragen ${carried} der ${used}, die am ersten Tag verbraucht werden; ${rest}`,
    couldCarry: (litres, most, used) =>
      `${litres} gesättigtes Kalkwasser am Tag könnten ${most} am Tag tragen, und ${used} werden verbraucht.`,
    co2Supply: (ph) =>
      `Der CO₂-Nachschub begrenzt das Kalkwasser: Die Raumluft kann so viel Hydroxid nicht versorgen, und der pH-Wert übersteigt Ihre ${ph}. Mehr Belüftung oder ein Teil der Dosis als Hydrogencarbonat senkt ihn.`,
    saturation: (most, rest) =>
      `Die Sättigung begrenzt das Kalkwasser: Mehr als ${most} g/L löst Wasser nicht. ${rest}`,
    evaporation: (rest) => `Die Verdunstung begrenzt das Kalkwasser. ${rest}`,
    strength: (brought, strength, rest) =>
      `Die Stärke der Mischung begrenzt das Kalkwasser: Bei ${strength} g/L bringt es ${brought} am Tag. ${rest}`,
    tooMuch: (brought, used) =>
      `Es wird mehr dosiert als verbraucht: Kalkwasser bringt ${brought} am Tag, das Becken verbraucht ${used}.`,
    tooMuchTogether: (brought, others, used) =>
      `Es wird mehr dosiert als verbraucht: Kalkwasser bringt ${brought} am Tag und anderes ${others}, das Becken verbraucht ${used}.`,
    broughtTogether: (brought, others, used) =>
      `Kalkwasser bringt ${brought} am Tag und anderes ${others}, von ${used}, die am ersten Tag verbraucht werden.`,
    nothingBinds: (brought, litres) =>
      `Kalkwasser trägt den Verbrauch: ${brought} am Tag in ${litres} Nachfüllwasser; noch begrenzt es nichts.`,
    settles: (weighed, undissolved) =>
      `Von den ${weighed} g/L, die Sie einwiegen, bleiben ${undissolved} ungelöst am Boden.`,
  },
  change: {
    setMixIn: (gramsPerL, litres, days) =>
      `Mischung auf ${gramsPerL} g/L, höchstens ${litres} L davon, nachgefüllt ${days === 1 ? 'jeden Tag' : `alle ${days} Tage`}`,
    setMix: (gramsPerL) => `Die Mischung auf ${gramsPerL} g/L stellen`,
    refillEvery: (count) => `Alle ${count} ${days(count)} auffüllen`,
  },
  reservoir: {
    refillEvery: (count) =>
      `Stellen Sie „Aufgefüllt alle“ auf höchstens ${count} ${days(count)}. Ein größerer hielte länger und brächte mehr, wenn seine Pumpe hängt: Proben Sie das zuerst.`,
    notADay:
      'Er reicht keinen Tag: Füllen Sie ihn öfter auf. Ein größerer hielte länger und brächte mehr, wenn seine Pumpe hängt: Proben Sie das zuerst.',
    emptied: (day, hours) =>
      `Der Ausfall leert den Nachfüllbehälter an Tag ${day}; er bleibt ${hours} Stunden des Versuchs leer.`,
    runsDry: (day, hours, often) =>
      `Der Nachfüllbehälter ist an Tag ${day} leer und bleibt es ${hours} Stunden des Versuchs: Der Salzgehalt steigt, und inzwischen wird daraus nichts dosiert. ${often}`,
  },
  supplies: {
    reservoir: (count) => `ein voller Nachfüllbehälter reicht ${count} Tage`,
    calciumHydroxide: (grams) => `${grams} g Calciumhydroxid im Monat`,
    salt: (kilograms) => `${kilograms} kg Salz im Monat`,
    all: (what) => `Gebraucht wird: ${what}.`,
  },
};
