import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  tests: {
    caption: 'Was der Halter sieht, und was wahr ist',
    sentence: (tests, fall, by) =>
      `${tests} Tests, die Linie durch sie und die Wahrheit. Die Linie fällt um ${fall} dKH am Tag, plus oder minus ${by}.`,
    key: 'Grau ist die Wahrheit; Punkte und Linie sind, was Tests zeigen.',
    day: (day) => `${day} d`,
  },
  day: {
    caption: 'Licht, pH und Verbrauch über den Tag',
    light: 'Licht',
    taken: 'Verbrauch, dKH je Stunde',
    range: (low, high) => `${low} bis ${high}`,
    sentence: (light, ph, taken) =>
      `Ein Tag dieses Beckens: Licht ${light}, pH ${ph}, die Korallen verbrauchen ${taken} dKH je Stunde. Der pH steigt, solange Algen im Licht Kohlendioxid aufnehmen, und fällt im Dunkeln.`,
  },
  flow: {
    caption: 'Vom Sack bis zum Skelett, in dKH dieses Beckens',
    tank: 'Becken',
    stream: (name, dkh) => `${name} ${dkh} dKH`,
    brought: (streams) => `Gebracht: ${streams}.`,
    nothingBrought: 'Nichts wird gebracht.',
    taken: (streams) => `Genommen: ${streams}.`,
    nothingTaken: 'Nichts wird genommen.',
    in: (days) => `Über ${days} Tage.`,
    goes: (from, to, grams) =>
      `Das Becken geht von ${from} auf ${to} dKH, und ${grams} g Skelett werden abgelagert.`,
  },
  species: {
    caption: 'Wo der Kohlenstoff ist, bei jedem pH',
    bicarbonate: 'Hydrogencarbonat',
    carbonate: 'Carbonat',
    sentence: (ph, co2, bicarbonate, carbonate) =>
      `Bei pH ${ph} ist der Kohlenstoff des Beckens zu ${co2} Kohlendioxid, zu ${bicarbonate} Hydrogencarbonat und zu ${carbonate} Carbonat.`,
    source: 'Lueker et al. 2000, bei Temperatur und Salzgehalt dieses Beckens.',
  },
};
