import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Warum die Alkalinität fällt, wenn Korallen wachsen',
  about: 'Die Bilanz eines wachsenden Beckens: Was heute genügt, ist nächsten Monat zu wenig.',
  plan: {
    title: 'Eine Dosis, die einmal genügte',
    question:
      'Die Pumpen geben, was die Korallen am ersten Tag verbraucht haben. Hält die Alkalinität?',
  },
  names: {
    soda: 'Soda',
    calcium: 'Calciumchlorid',
  },
  setting:
    'Ein Becken mit {begin.tank.volumeL} beginnt bei {begin.alkalinityStart}. Am ersten Tag verbrauchen seine Korallen {begin.useFirstDay}, und zwei Pumpen bringen ebenso viel zurück, Tag für Tag. Die Korallen wachsen um {begin.corals.growthPercentPerDay}.',
  predict: {
    question: 'Es vergehen {begin.days}. Wo steht die Alkalinität dann?',
    choices: {
      same: 'Wo sie war: Was verbraucht wird, wird zurückgebracht.',
      lower: 'Tiefer: Die Korallen verbrauchen mehr als früher.',
      higher: 'Höher: Wachsende Korallen geben Alkalinität zurück.',
    },
  },
  reveal:
    'Die Alkalinität endet bei {begin.alkalinityEnd}, das ist {begin.alkalinityFall} tiefer. Die Korallen haben im Ganzen {begin.takenByCorals} verbraucht und {begin.skeletonG} Skelett abgelagert. Die Korallen wuchsen um {begin.grownPercent}; der Verbrauch ging nur von {begin.useFirstDay} auf {begin.useLastDay}, weil sie langsamer bauen, wenn die Sättigung sinkt, während die Pumpen blieben, wie sie waren.',
  control: {
    invite: 'Verschieben Sie das Wachstum der Korallen, und achten Sie auf das Ende der Linie.',
    now: 'Bei einem Wachstum von {now.corals.growthPercentPerDay} verbrauchen sie am Ende {now.useLastDay}, und die Alkalinität endet bei {now.alkalinityEnd}.',
  },
  ask: {
    question: 'Und wenn die Korallen gar nicht wüchsen: Würden dieselben Pumpen das Becken halten?',
    answer:
      'Ja. Ohne Wachstum der Kolonie bleibt der Verbrauch bei {asked.useLastDay}, und die Alkalinität endet bei {asked.alkalinityEnd}. Skelett wird trotzdem abgelagert, {asked.skeletonG}: Die Dosis ändert sich nicht, weil Korallen bauen, sondern weil es mehr Koralle gibt, die baut.',
  },
  why: {
    first:
      'Eine Koralle baut ihr Skelett aus Calciumcarbonat. Für jedes Stück nimmt sie ein Calcium und ein Carbonat aus dem Wasser. Carbonat trägt zwei Ladungen, also kostet jedes Stück zwei Äquivalente Alkalinität.',
    second:
      'Wenn die Kolonie wächst, baut mehr Oberfläche. Der Verbrauch steigt im gleichen Schritt, und eine Dosis, die sich nie ändert, bleibt zurück. Sinkt die Alkalinität, so sinkt auch die Sättigung, und das Wachstum wird etwas langsamer: Das verdeckt einen Teil der Lücke.',
  },
  equation: {
    text: 'Ca²⁺ + 2 HCO₃⁻ → CaCO₃ + CO₂ + H₂O',
    inWords:
      'Ein Calcium und zwei Hydrogencarbonate werden zu einem Calciumcarbonat, einem Kohlendioxid und einem Wasser. Die zwei Hydrogencarbonate sind die zwei Äquivalente.',
  },
  assumes:
    'Der Verbrauch wächst gleichmäßig und verzweigt und antwortet sanft auf die Sättigung (übliche Praxis). Das Becken wird nicht gefüttert.',
};
