import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Alkalinität ist nicht pH',
  about: 'Die Luft des Raums bewegt den pH; die Alkalinität merkt nichts davon.',
  plan: {
    title: 'Fenster auf, Fenster zu',
    question: 'Welchen Messwert bewegt die Luft des Raums?',
  },
  setting:
    'Ein Becken mit {begin.tank.volumeL} ohne Steinkorallen, bei {begin.alkalinityStart}. Die Fenster sind offen, und der Raum hat {begin.room.co2Ppm} Kohlendioxid. Dann kommt der Winter, die Fenster bleiben zu, und der Raum hat {predicted.room.co2Ppm}.',
  predict: {
    question:
      'Was sagen die beiden Tests, wenn sich das Wasser in der verbrauchten Luft eingestellt hat?',
    choices: {
      both: 'Alkalinität und pH sind beide niedriger.',
      alkalinity: 'Die Alkalinität ist niedriger, der pH gleich.',
      ph: 'Der pH ist niedriger, die Alkalinität gleich.',
    },
  },
  reveal:
    'Der pH erreichte bei offenen Fenstern höchstens {begin.phHighest} und in der verbrauchten Luft höchstens {predicted.phHighest}. Die Alkalinität endet im einen Fall bei {begin.alkalinityEnd}, im anderen bei {predicted.alkalinityEnd}.',
  control: {
    invite: 'Verschieben Sie das Kohlendioxid des Raums.',
    now: 'Bei {now.room.co2Ppm} schwankt der pH zwischen {now.phLowest} und {now.phHighest}; die Alkalinität endet bei {now.alkalinityEnd}.',
  },
  ask: {
    question:
      'Jemand misst in diesem Raum einen niedrigen pH und will Alkalinität dosieren, um ihn zu heben. Welches Fenster würde stattdessen helfen?',
    answer:
      'Ein offenes. In Außenluft, {asked.room.co2Ppm}, erreicht dasselbe Wasser {asked.phHighest}, und die Alkalinität steht weiter bei {asked.alkalinityEnd}. Eine Dosis würde eine Zahl heben, die nie zu niedrig war.',
  },
  why: {
    first:
      'Die Alkalinität zählt Ladungen: wie viel mehr positives als negatives Salz das Wasser enthält. Kohlendioxid hat keine Ladung. Wenn es ins Wasser kommt, macht es aus Carbonat Hydrogencarbonat: zwei Ladungen in einem Stück werden zu je einer Ladung in zwei Stücken. Die Summe der Ladungen bleibt.',
    second:
      'Der pH richtet sich danach, wie der Kohlenstoff verteilt ist. Mehr Kohlendioxid macht mehr Säure, und der pH fällt. Eine pH-Messung sagt deshalb nichts über die Alkalinität, solange man die Luft nicht kennt.',
  },
  equation: {
    text: 'CO₂ + CO₃²⁻ + H₂O ⇌ 2 HCO₃⁻',
    inWords:
      'Kohlendioxid, Carbonat und Wasser werden zu zwei Hydrogencarbonaten: vorher zwei Ladungen, nachher zwei Ladungen.',
  },
  assumes:
    'Die Luft des Raums ist den ganzen Tag dieselbe. Der Versuch beginnt auf seinem eingeschwungenen Tagesgang.',
};
