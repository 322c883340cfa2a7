import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Warum sich Calcium kaum bewegt',
  about: 'Wachstum nimmt beides, Mol für Mol; vom einen enthält das Wasser weit mehr.',
  plan: {
    title: 'Zehn Tage ohne Dosis',
    question:
      'Korallen nehmen mit jedem Stück, das sie bauen, Calcium auf. Warum zeigt der Calciumtest es nicht?',
  },
  setting:
    'Ein Becken mit {begin.tank.volumeL} bleibt {begin.days} lang ohne Dosis. Es beginnt bei {begin.alkalinityStart} und {begin.calciumStart} Calcium, und seine Korallen verbrauchen {begin.useFirstDay}.',
  predict: {
    question:
      'Die Alkalinität fällt um {begin.alkalinityFallPercent}. Um wie viel fällt das Calcium?',
    choices: {
      same: 'Etwa um denselben Anteil: Korallen nehmen eines mit dem anderen.',
      tenth: 'Um einen kleinen Bruchteil dieses Anteils.',
      none: 'Gar nicht.',
    },
  },
  reveal:
    'Die Alkalinität ging von {begin.alkalinityStart} auf {begin.alkalinityEnd}. Das Calcium ging von {begin.calciumStart} auf {begin.calciumEnd}, also um {begin.calciumFallPercent}: weniger, als die meisten Calciumtests unterscheiden können.',
  control: {
    invite:
      'Verschieben Sie, was die Korallen verbrauchen, und vergleichen Sie die beiden Diagramme.',
    now: 'Die Alkalinität fällt um {now.alkalinityFall}, das Calcium endet bei {now.calciumEnd}. Das sind {now.calciumForEachDkh} Calcium für jedes dKH.',
  },
  ask: {
    question:
      'Anderswo ist ein Becken arm an Calcium, dessen Alkalinität allein mit Soda gehalten wird. Wie kam es dazu?',
    answer:
      'Langsam. Jedes dKH, das Korallen verbrauchen, kostet {asked.calciumForEachDkh} Calcium, ob etwas die Alkalinität zurückbringt oder nicht. Soda bringt keines. Selbst ein ruhiges Becken, mit {asked.corals.useDkhPerDay} und ohne Dosis, geht über {asked.days} von {asked.calciumStart} auf {asked.calciumEnd}.',
  },
  why: {
    first:
      'Jedes Stück Skelett braucht ein Calcium und zwei Äquivalente Alkalinität. So gezählt enthält das Wasser ein Mehrfaches an Calcium gegenüber der Alkalinität: Derselbe Bissen ist vom einen ein großer, vom anderen ein kleiner Teil.',
    second:
      'Deshalb testet man Alkalinität jede Woche und Calcium hin und wieder. Es heißt auch, dass ein langsamer Verlust an Calcium monatelang unbemerkt bleibt, wenn nur Alkalinität dosiert wird.',
  },
  equation: {
    text: 'Δ[Ca²⁺] = ½ · Δ(Alkalinität)',
    inWords:
      'In Mol Calcium und Äquivalenten Alkalinität gezählt ändert sich das Calcium um die Hälfte dessen, um was sich die Alkalinität ändert.',
  },
  assumes:
    'Etwas Magnesium und Strontium geht an der Stelle von Calcium ins Skelett (aus dem Gedächtnis), sodass die Zahl etwas unter der reinen liegt.',
};
