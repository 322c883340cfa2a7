import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Das langsame Tropfen und die hängende Pumpe',
  about: 'Dieselbe Flasche Kalkwasser, über Tage oder auf einmal.',
  plan: {
    title: 'Eine Flasche Kalkwasser',
    question: 'Kommt es darauf an, wie schnell dasselbe Kalkwasser hineingeht?',
  },
  names: {
    doser: 'Kalkwasser',
  },
  setting:
    'Eine Flasche mit {begin.dosers.0.stockL} Kalkwasser tropft in {begin.tank.volumeL}: {begin.dosers.0.mlPerDay}, verteilt über {begin.dosers.0.schedule.hours}. Der pH erreicht höchstens {begin.phHighest}. Dann stellt jemand die Pumpe so ein, dass die Dosis des Tages nach {predicted.dosers.0.schedule.hours} drin ist.',
  predict: {
    question: 'Jeden Tag geht dasselbe Kalkwasser hinein, nur schneller. Was ändert sich?',
    choices: {
      nothing: 'Nicht viel: Eine Tagesdosis ist eine Tagesdosis.',
      ph: 'Der pH steigt höher; die Alkalinität endet, wo sie endete.',
      both: 'Beide enden viel höher.',
    },
  },
  reveal:
    'Der pH erreicht nun {predicted.phHighest} statt {begin.phHighest}. Die Alkalinität endet bei {predicted.alkalinityEnd}, vorher bei {begin.alkalinityEnd}.',
  control: {
    title: 'Die Tagesdosis geht hinein über',
    invite: 'Verschieben Sie die Stunden, über die die Tagesdosis hineingeht.',
    now: 'Über {now.dosers.0.schedule.hours} erreicht der pH höchstens {now.phHighest}.',
  },
  ask: {
    question:
      'Die Pumpe bleibt mit {asked.dosers.0.schedule.pumpMlPerMin} an, bis die ganze Flasche von {asked.dosers.0.stockL} im Becken ist. Wie hoch geht der pH?',
    answer:
      'Auf {asked.phHighest}, und die Alkalinität bewegt sich innerhalb eines Tages um {asked.largestDailyChange}. Was das aufhält, ist nicht die Pumpe, sondern die Größe der Flasche: ein Behälter, der dem Becken auch dann nicht schaden kann, wenn alles hineinläuft. Ziehen Sie zuerst mit trockenen Händen den Stecker der Pumpe, dann messen Sie; für kranke Tiere fragen Sie einen fischkundigen Tierarzt.',
  },
  why: {
    first:
      'Hydroxid geht sofort hinein; Kohlendioxid aus der Luft braucht Stunden, um zu folgen. Beim langsamen Tropfen hält die Luft Schritt, und der pH bewegt sich kaum. Gegossen muss das Wasser sein eigenes Kohlendioxid hergeben, und der pH springt, bis die Luft nachgekommen ist.',
    second:
      'Die Alkalinität zählt nur, was hineinging, nicht wie schnell. Ein Alkalinitätstest warnt Sie also nicht vor einer Pumpe, die in Schüben dosiert; eine pH-Sonde schon.',
  },
  equation: {
    text: 'Ca(OH)₂ + 2 CO₂ → Ca²⁺ + 2 HCO₃⁻',
    inWords:
      'Ein Calciumhydroxid braucht zwei Kohlendioxide, um zu einem Calcium und zwei Hydrogencarbonaten zu werden.',
  },
  assumes:
    'Kalk fällt nur bei sehr hoher Sättigung von selbst aus, und wie schnell, ist eine Veranschaulichung, keine Vorhersage. Über dem Bereich der Konstanten wird der pH nur als darüber gezeigt. Calciumhydroxid: Handschuhe und Schutzbrille.',
};
