import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  undo: 'Rückgängig',
  redo: 'Wiederholen',
  startOver: 'Von vorn',
  planOf: (name) => `Der Plan von ${name}`,
  everythingElse: 'Alles Weitere im Plan',
  example: {
    title: 'Die Lagune der Feldschule',
    question:
      'Kann Kalkwasser in der Nachfüllung sie allein halten? Ziehen Sie an „Stärke der Mischung“, und sehen Sie Versuch A an.',
  },
  verdict: {
    title: 'Urteil',
    stampInside: 'innerhalb bis zum Ende',
    stampOutside: (what, day) => `${what} außerhalb ab Tag ${day}`,
    stampStops: (day) => `endet an Tag ${day}`,
    why: 'Warum, und was sonst bekannt ist',
    beingWorkedOut: 'wird gerade gerechnet …',
    couldNotRun: (name, why) =>
      `${name} konnte so, wie er jetzt steht, nicht gerechnet werden: ${why}`,
    lastGoodRun: 'Was Sie sehen, ist seine letzte gelungene Rechnung.',
    shareDone: (name) => `${name}: gerechneter Anteil des Versuchs`,
  },
  plans: {
    title: 'Versuche auf der Werkbank',
    today: 'Heutiger Plan',
    trial: (letter) => `Versuch ${letter}`,
    myTank: 'Mein Becken',
    noRoomToTry: (today) =>
      `Nach „${today}“ läuft Ihr Becken: Ziehen ändert daran nichts. Wählen Sie einen Versuch, oder entfernen Sie einen, um Platz zu schaffen.`,
    unnamed: 'Versuch ohne Namen',
    remove: (name) => `${name} entfernen`,
    full: (most) => `Die Werkbank fasst ${most} Versuche; entfernen Sie erst einen.`,
    keep: 'Behalten und einen weiteren probieren',
    name: 'Name',
  },
  runsBy: {
    neverSaid: (today) =>
      `Messbuch und Karte richten sich nach „${today}“, den Sie noch nicht Ihren genannt haben: Stellen Sie einen Versuch so ein, wie Ihr Becken ist, und drücken Sie „Mein Becken läuft nach …“.`,
    since: (today, when) =>
      `Ihr Becken läuft nach „${today}“, wie er seit ${when} dasteht. Probieren ändert daran nichts.`,
    runsBy: (name) => `Mein Becken läuft nach „${name}“`,
    before: (count) => (count === 1 ? 'Ein Plan vor diesem' : `${count} Pläne vor diesem`),
    ranSince: (when) => `Ab ${when}:`,
    ranFirst: 'Zuerst:',
    asNow: 'wie jetzt',
    setting: (title, then, now) => `${title} ${then} (jetzt ${now})`,
    andMore: (count) => `und ${count} weitere`,
    again: 'Wieder nach diesem laufen',
    turned:
      'Das Messbuch bis dahin wird nach dem Plan davor gelesen: An diesem Tag wurde anders dosiert.',
    readBy: (until) => `Das Messbuch bis ${until} wird nach ihm gelesen.`,
    neverRanSo: 'So lief es nie: Der Plan wurde berichtigt',
    putRight: 'Das Messbuch wird nicht nach ihm gelesen: Der Plan wurde berichtigt.',
    ranSo: (until) => `So lief es bis ${until}`,
  },
  room: {
    none: (title) =>
      `„${title}“ findet auf der Werkbank keinen Platz: Von Ihrem wird nichts ersetzt. Welcher Versuch darf weg?`,
    remove: (name) => `${name} entfernen`,
    leave: 'Keiner, weglassen',
  },
  anotherQuestion: 'Eine andere Frage kam dazwischen.',
};
