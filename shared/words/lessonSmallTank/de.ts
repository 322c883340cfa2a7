import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Kleines Becken, schnelles Becken',
  about: 'Dieselben Korallen, dieselbe Lampe, dieselbe Luft; nur weniger Wasser.',
  plan: {
    title: 'Dieselben Korallen in weniger Wasser',
    question: 'Wie viel schneller bewegt sich ein kleines Becken?',
  },
  setting:
    'Lebende Korallen von {begin.corals.areaM2} sitzen in {begin.tank.volumeL} und senken über {begin.days} die Alkalinität um {begin.alkalinityFall}. Der Raum nimmt {begin.evaporation.litresPerDay} Süßwasser, und niemand füllt nach. Dann ziehen dieselben Korallen in {predicted.tank.volumeL} um.',
  predict: {
    question: 'Was tut die Alkalinität im kleineren Becken?',
    choices: {
      same: 'Sie fällt wie vorher: Es sind dieselben Korallen.',
      faster: 'Sie fällt schneller, etwa im Verhältnis des fehlenden Wassers.',
      slower: 'Sie fällt langsamer: Es gibt weniger zu nehmen.',
    },
  },
  reveal:
    'Über {predicted.days} nehmen die Korallen dem kleinen Becken {predicted.takenByCorals}, dem großen {begin.takenByCorals}. Sein Salzgehalt steigt auf {predicted.salinityHighest}, der des großen auf {begin.salinityHighest}.',
  control: {
    invite: 'Verschieben Sie die Wassermenge.',
    now: 'In {now.tank.volumeL} nehmen die Korallen {now.takenByCorals}, und der Salzgehalt erreicht {now.salinityHighest}.',
  },
  ask: {
    question:
      'Ein Becken mit {asked.tank.volumeL}: Wie weit führen {asked.days} ohne Nachfüllung und Dosis?',
    answer:
      'Die Korallen nehmen {asked.takenByCorals}, obwohl die Alkalinität nur um {asked.alkalinityFall} fällt: Was verdunstet, lässt den Rest in weniger Wasser zurück. Der Salzgehalt erreicht {asked.salinityHighest}. Ein kleines Becken verzeiht einen Tag, kein Wochenende.',
  },
  why: {
    first:
      'Korallen nehmen Mol, und die Verdunstung nimmt Liter. Tests messen eine Konzentration: Mol in jedem Liter. Derselbe Bissen aus weniger Wasser ist eine größere Änderung.',
    second:
      'Alles, was als Menge ins Wasser kommt, verhält sich genauso: Futter, eine verschüttete Dosis, eine hängende Pumpe. Das ist der ganze Grund für ein größeres Technikbecken.',
  },
  equation: {
    text: 'Änderung eines Messwerts = genommene Menge ⁄ Volumen',
    inWords: 'Die Änderung eines Messwerts ist die genommene Menge geteilt durch das Volumen.',
  },
  assumes:
    'Rate und Oberfläche der Korallen sind erfunden, aber üblich. In dieser Lektion gibt es keine Nachfüllung.',
};
