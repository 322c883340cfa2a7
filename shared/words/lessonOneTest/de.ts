import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Wie gewiss ist ein einzelner Test?',
  about:
    'Die Streuung eines Tests gegen ein langsames Fallen, und wie viele Tage man braucht, um hindurchzusehen.',
  plan: {
    title: 'Einige wenige Tests',
    question: 'Wie viele Tage Testen braucht es, um den Verbrauch zu kennen?',
  },
  setting:
    'In Wahrheit verliert dieses Becken ohne Dosis {begin.alkalinityFallPerDay}. Die Wahrheit können Sie nicht sehen, nur Tests: einen am Tag zur selben Stunde, {begin.testCount} Stück, jeder mit einer Streuung von {begin.testScatter} (eine Standardabweichung, ein guter Test in sorgfältigen Händen).',
  predict: {
    question: 'Sie ziehen die beste Gerade durch Ihre Tests. Wie gut kennen Sie das Fallen?',
    choices: {
      well: 'Gut: auf ein Viertel seiner selbst genau.',
      roughly: 'Ungefähr: Es fällt gewiss, aber wie schnell, ist offen.',
      not: 'Gar nicht: kein Fallen oder das doppelte würde ebenso gut passen.',
    },
  },
  reveal:
    'Die Linie durch diese Tests fällt um {begin.testedFallPerDay}, plus oder minus {begin.testedDoubt}. Die Wahrheit ist {begin.alkalinityFallPerDay}. Eine andere Woche, andere Tests, eine andere Antwort.',
  control: {
    title: 'Tage mit Tests',
    invite: 'Verschieben Sie die Zahl der Tage mit Tests.',
    now: '{now.testCount} Tests: ein Fallen um {now.testedFallPerDay}, plus oder minus {now.testedDoubt}. Die Wahrheit ist {now.alkalinityFallPerDay}.',
  },
  ask: {
    question: 'Getestet wurde über {asked.days}: Wie viel ist noch zweifelhaft?',
    answer:
      'Der Zweifel ist von {begin.testedDoubt} auf {asked.testedDoubt} geschrumpft. Mehr Tests helfen; dass sie weiter auseinanderliegen, hilft mehr. Deshalb sagen zwei Tests im Abstand von vierzehn Tagen mehr als drei hintereinander.',
  },
  why: {
    first:
      'Jeder Test streut um die Wahrheit. Eine Steigung ist ein Unterschied von Messwerten geteilt durch die Zeit dazwischen: Die Streuung bleibt, die Zeit wächst, also schrumpft der Zweifel.',
    second:
      'Ein Test, der immer zu hoch anzeigt, verdirbt die Steigung nicht, denn der Fehler steckt in jedem Messwert. Ein Test zu einer anderen Stunde des Tages verdirbt sie, denn das Becken schwankt von selbst.',
  },
  equation: {
    text: 'u(Steigung) = σ ⁄ √( Σ (t − t̄)² )',
    inWords:
      'Der Zweifel an der Steigung ist die Streuung eines Tests geteilt durch die Wurzel aus der Summe der quadrierten Abstände der Zeiten von ihrem Mittel. Plus oder minus heißt das Doppelte davon.',
  },
  assumes:
    'Die Streuung eines Tests ist übliche Praxis. Die Ziehung des Zufalls ist bei jedem Besuch dieselbe, damit eine Klasse dieselben Punkte sieht.',
};
