import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Wann Wasserwechsel nicht mehr genügen',
  about: 'Jede Woche derselbe Eimer, gegen Korallen, die mehr wollen.',
  plan: {
    title: 'Ein Eimer in der Woche',
    question: 'Wie viel Verbrauch kann ein wöchentlicher Wasserwechsel tragen?',
  },
  names: {
    salt: 'Mischung mit hoher Alkalinität',
  },
  setting:
    'Ein Becken mit {begin.tank.volumeL} bekommt alle {begin.waterChanges.everyDays} {begin.waterChanges.percent} neues Wasser, auf {begin.waterChanges.salt.alkalinityDkh} angesetzt. Seine jungen Korallen verbrauchen {begin.corals.useDkhPerDay}; {begin.days} später steht es bei {begin.alkalinityEnd}. Die Korallen gedeihen; ein Jahr darauf verbrauchen sie {predicted.corals.useDkhPerDay}.',
  predict: {
    question: 'Jede Woche derselbe Eimer: Was geschieht nun?',
    choices: {
      holds: 'Sie hält: Neues Wasser bringt mehr, als das Becken verloren hat.',
      below: 'Sie sinkt unter die Grenze des Halters.',
      climbs: 'Sie steigt: Die Salzmischung ist reicher als das Becken.',
    },
  },
  reveal:
    'Sie sinkt auf {predicted.alkalinityEnd}, unter die Grenze des Halters von {predicted.limits.alkalinityLowDkh}. Das neue Wasser hebt sie jede Woche ein wenig; die Korallen nehmen vor dem nächsten Eimer mehr als das.',
  control: {
    invite: 'Zurück zu den jungen Korallen: Verschieben Sie die Größe des Eimers.',
    now: '{now.waterChanges.percent} alle {now.waterChanges.everyDays} enden bei {now.alkalinityEnd}. Die größte Bewegung innerhalb eines Tages ist {now.largestDailyChange}.',
  },
  ask: {
    question:
      'Ausgewachsene Korallen, und ein Eimer von {asked.waterChanges.percent} in der Woche: Hält das den Bereich, und was kostet es?',
    answer:
      'Es endet bei {asked.alkalinityEnd}, und jeder Wechsel bewegt das Becken innerhalb eines Tages um bis zu {asked.largestDailyChange}. Ab einem gewissen Verbrauch ist die Antwort kein größerer Eimer, sondern eine Dosis, die so langsam hineingeht, wie die Korallen sie nehmen.',
  },
  why: {
    first:
      'Ein Wasserwechsel bewegt das Becken ein Stück zum neuen Wasser hin. Je näher das Becken schon ist, desto weniger bringt er. Es gibt also einen Stand, bei dem der Gewinn einer Woche ihrem Verbrauch gleicht, und dieser Stand sinkt, wenn der Verbrauch steigt.',
    second:
      'Bei kleinem Verbrauch liegt der Stand im Bereich, und der Eimer genügt. Bei großem liegt er darunter, wie gut das Salz auch sei.',
  },
  equation: {
    text: 'Verbrauch · Tage zwischen Wechseln = gewechselter Anteil · (neues Wasser − Becken)',
    inWords:
      'Bei dem Stand, auf den es sich einstellt, gleicht der Verbrauch der Korallen zwischen zwei Wechseln dem gewechselten Anteil mal dem Unterschied zwischen neuem Wasser und Becken.',
  },
  assumes:
    'Die Salzmischung ist eine erfundene aus der reichen Familie, und die Grenzen sind übliche Praxis. Korallen werden sanft langsamer, wenn die Sättigung fällt.',
};
