import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Kalkwasser, pH und die Luft des Raums',
  about: 'Kalkwasser braucht Kohlendioxid, und nur die Luft kann es bringen.',
  plan: {
    title: 'Kalkwasser unter ruhiger Oberfläche',
    question: 'Kalkwasser hält die Alkalinität. Was bestimmt den pH?',
  },
  setting:
    'Kalkwasser von {begin.topOff.gramsPerL} geht in {begin.tank.volumeL}, so wie Wasser verdunstet, und die Korallen verbrauchen {begin.useFirstDay}. Luft erreicht das Wasser langsam (kLa {begin.gas.kLaPerH}), und der pH erreicht höchstens {begin.phHighest}. Nun wird der Abschäumer gereinigt, und die Oberfläche bricht auf: Luft erreicht es viel schneller (kLa {predicted.gas.kLaPerH}).',
  predict: {
    question: 'Sonst wird nichts geändert. Was bewirkt mehr Luft?',
    choices: {
      phUp: 'Der pH steigt höher: Mehr Luft treibt Kohlendioxid aus.',
      phDown: 'Der pH bleibt tiefer: Mehr Luft bringt Kohlendioxid hinein.',
      alkalinity: 'Der pH bleibt; die Alkalinität sinkt.',
    },
  },
  reveal:
    'Mit mehr Luft erreicht der pH höchstens {predicted.phHighest} statt {begin.phHighest}. Die Alkalinität endet bei {predicted.alkalinityEnd} gegenüber {begin.alkalinityEnd}: Dasselbe Kalkwasser bringt fast dieselbe Alkalinität, was die Luft auch tut.',
  control: {
    invite:
      'Wieder unter der ruhigen Oberfläche: Verschieben Sie die Stärke des Kalkwassers, und achten Sie auf den Punkt des Beckens im Bild der Kohlenstoffformen.',
    now: 'Mit {now.topOff.gramsPerL} läuft der pH von {now.phLowest} bis {now.phHighest}, und die Alkalinität endet bei {now.alkalinityEnd}.',
  },
  ask: {
    question:
      'Die Fenster bleiben zu, und der Raum hat {asked.room.co2Ppm} Kohlendioxid. Ist das schlecht für ein Becken mit Kalkwasser?',
    answer:
      'Nicht immer: Der pH erreicht nun höchstens {asked.phHighest}, wo es vorher {begin.phHighest} war. Verbrauchte Luft nährt das Kalkwasser. Sein tiefster Stand, nachts, ist {asked.phLowest}.',
  },
  why: {
    first:
      'Kalkwasser ist Hydroxid. Korallen bauen mit Carbonat, also muss das Hydroxid erst Kohlendioxid finden. Es nimmt, was im Wasser gelöst ist, und das Wasser hat dann weniger als der Raum: Das Becken atmet ein, nicht aus.',
    second:
      'Wie hoch der pH steigt, hängt davon ab, wie schnell der Raum diese Lücke füllen kann. Die Kohlenstoffformen verschieben sich mit: je höher der pH, desto mehr Carbonat und desto weniger Kohlendioxid. Mehr Luft oder verbrauchtere Luft senkt den pH; stärkeres Kalkwasser hebt ihn.',
  },
  equation: {
    text: 'OH⁻ + CO₂ → HCO₃⁻',
    inWords: 'Ein Hydroxid und ein Kohlendioxid werden zu einem Hydrogencarbonat.',
  },
  assumes:
    'kLa sagt, wie schnell die Luft ihr Gleichgewicht mit dem Wasser findet, je Stunde; niemand kennt seines, die Werkbank kann es aus Messungen errechnen. pH, wie ihn eine Sonde anzeigt (NBS); eine wirkliche Sonde liegt um ein Zehntel daneben. Calciumhydroxid: Handschuhe und Schutzbrille.',
};
