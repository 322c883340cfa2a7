import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  length: { hours: (count) => `${count} Stunden`, days: (count) => `${count} Tagen` },
  alkalinity: {
    startsOutside: (low, high, end, length) =>
      `beginnt außerhalb Ihrer ${low}–${high} und steht nach ${length} bei ${end}`,
    fallsBelow: (limit, day, end, length) =>
      `fällt an Tag ${day} unter ${limit} und steht nach ${length} bei ${end}`,
    risesAbove: (limit, day, end, length) =>
      `steigt an Tag ${day} über ${limit} und steht nach ${length} bei ${end}`,
    rises: (from, to, length, band) =>
      `steigt in ${length} von ${from} auf ${to}, bisher innerhalb von ${band}`,
    falls: (from, to, length, band) =>
      `fällt in ${length} von ${from} auf ${to}, bisher innerhalb von ${band}`,
    holds: (range, length) => `liegt in ${length} immer bei ${range}`,
  },
  noSuchWater: 'solches Wasser bleibt nicht klar: Vorher wäre Kalk ausgefallen',
  stopsOnDay: (day) => `endet an Tag ${day}`,
  phPeaks: (ph, day) => `der pH-Wert erreicht höchstens ${ph}, an Tag ${day}`,
  limewaterCovers: (percent) => `Kalkwasser deckt ${percent} % des Verbrauchs`,
  stops: {
    noWater: (hour, salinity, litres) =>
      `Der Versuch endet in Stunde ${hour}: Im Becken ist fast kein Wasser mehr (Salzgehalt ${salinity} bei noch ${litres}). Füllen Sie früher auf, oder suchen Sie das Leck.`,
    tooSalty: (hour, salinity, litres) =>
      `Der Versuch endet in Stunde ${hour}: Aus dem Becken ist zu viel Wasser verdunstet (Salzgehalt ${salinity} bei noch ${litres}), jenseits der Chemie hier. Füllen Sie den Nachfüllbehälter früher auf, oder prüfen Sie die Verdunstung.`,
    noChemistry: (hour, why) =>
      `Der Versuch endet in Stunde ${hour}: Die Chemie im Becken hat keine Lösung (${why}).`,
    neverEnds: (hour, steps) =>
      `Der Versuch endet in Stunde ${hour}: Etwas schaltet oder reagiert so oft (mehr als ${steps} Mal in der Stunde), dass es sich nicht verfolgen lässt. Suchen Sie nach einer Schalthysterese oder einer Portion nahe null.`,
  },
};
