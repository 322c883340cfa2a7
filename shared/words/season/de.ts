import type { Words } from '../words';
import type { en } from './en';

const days = (count: number) => (count === 1 ? '1 Tag' : `${count} Tage`);
const dative = (count: number) => (count === 1 ? '1 Tag' : `${count} Tagen`);

export const de: Words<typeof en> = {
  panel: {
    title: 'Saison',
    why: 'Calcium, Magnesium und Salzgehalt bewegen sich über Monate. Das Messbuch wird nach dem geltenden Plan noch einmal durchgegangen, danach die kommende Saison, von den neuesten Messwerten an.',
    back: 'Zurückblicken, Tage',
    calcium: 'Calcium auf, mg/L',
    magnesium: 'Magnesium auf, mg/L',
    mostTitle: 'Höchstens am Tag',
    mostWhy: 'Übliche Praxis, ohne Quelle; Sie können es ändern.',
    mostCalcium: 'Calcium, mg/L am Tag',
    mostMagnesium: 'Magnesium, mg/L am Tag',
    mostSalinity: 'Salzgehalt, ppt am Tag',
    ask: 'Über die Saison blicken',
    trying: 'Das Messbuch und die kommende Saison werden durchgegangen …',
    trouble: (why) => `Es ließ sich nicht berechnen: ${why}`,
    tryIt: 'Auf der Werkbank probieren',
    full: 'Die Werkbank ist voll: Entfernen Sie dort erst einen Versuch.',
    caption: 'Was sich bewegt hat, warum, und was hinein muss',
    quantity: 'Größe',
    read: 'Zuletzt gemessen',
    moved: 'Bewegt seit',
    shares: 'Warum, nach dem Plan',
    add: 'Zugeben',
    forDays: 'Morgen',
    more: 'Die kommende Saison, und was angenommen wurde',
  },
  name: 'Saison',
  nothing: '–',
  movers: {
    growth: 'Korallenwachstum',
    chalk: 'Kalk',
    pumps: 'Dosierpumpen',
    topOff: 'Mischung der Nachfüllung',
    reactor: 'Kalkreaktor',
    byHand: 'Zugabe von Hand',
    waterChanges: 'Wasserwechsel',
    lost: 'verlorenes Wasser',
    level: 'mehr oder weniger Wasser, und Kleines',
  },
  share: (mover, moved) => `${mover} ${moved}`,
  readOn: (value, date) => `${value} (${date})`,
  movedCell: (read, by, date) => `${read} ± ${by} seit ${date}`,
  planSays: (planned) => `nach dem Plan ${planned}`,
  once: 'einmal gemessen: ein Stand, keine Steigung',
  never: 'nie gemessen: die Zahl des Plans',
  addCell: (grams, additive) => `${grams} g ${additive} jeden Morgen`,
  enough: 'nichts',
  highCell: 'zu hoch: siehe unten',
  testCell: 'nach einem Test',
  refusedCell: 'nicht angeboten: siehe unten',

  rose: (what, by, date, cause) => `${what} ist seit ${date} um ${by} gestiegen, ${cause}.`,
  fell: (what, by, date, cause) => `${what} ist seit ${date} um ${by} gefallen, ${cause}.`,
  causeBy: (mover, moved) => `vor allem durch: ${mover} (${moved})`,
  causeAgainst: (mover, moved, against, by) =>
    `vor allem durch: ${mover} (${moved}), dagegen: ${against} (${by})`,
  causeUnknown: (planned) => `wovon der Plan ${planned} erklärt`,
  noCause: 'wie der Plan sagt',
  steady:
    'Kein Messwert zeigt, dass sich Calcium, Magnesium oder Salzgehalt um mehr bewegt hätten, als ein Test erkennen kann.',
  noPast:
    'Nichts von Calcium, Magnesium und Salzgehalt wurde zweimal gemessen: Es gibt einen Stand, aber keine Steigung.',
  pour: (what, mornings) => `Geben Sie ${days(mornings)} lang jeden Morgen ${what} zu.`,
  pourWith: (what, mornings, litres, salinity) =>
    `Geben Sie ${days(mornings)} lang jeden Morgen ${what} zu und wechseln Sie dann täglich ${litres} L gegen neues Wasser, auf ${salinity} ppt gemischt.`,
  changeFirst: (mornings, litres, salinity) =>
    `Wechseln Sie ${days(mornings)} lang täglich ${litres} L gegen neues Wasser, auf ${salinity} ppt gemischt.`,
  grams: (grams, additive) => `${grams} g ${additive}`,
  noAdd: 'Zuerst muss nichts hinein.',
  thenMixed: (litres, salinity) =>
    `Danach wechseln Sie ${litres} L in der Woche gegen neues Wasser, auf ${salinity} ppt gemischt.`,
  thenSame: (litres) =>
    `Danach geht es mit ${litres} L neuem Wasser in der Woche weiter, gemischt wie bisher.`,
  thenNone: 'Danach muss dafür kein Wasser gewechselt werden.',
  thenCannot: 'Nichts, was probiert wurde, hält den Salzgehalt danach in Ihren Grenzen.',

  differs: (what, read, planned, by) =>
    `${what}: gemessen wurde eine Bewegung um ${read}; der Plan erklärt ${planned}, und ein Test ${by} in jede Richtung. Was es zeigen würde:`,
  agrees: (what, planned, by) =>
    `${what} hat sich bewegt, wie der Plan sagt (${planned}), innerhalb der ± ${by}, die ein Test erkennen kann.`,
  would: {
    kit: 'dasselbe Wasser mit einem anderen Test, oder eine Probe mit bekanntem Gehalt mit diesem',
    kitHigh: (by) =>
      `ein Test, der durchweg ${by} zu viel zeigt: dasselbe Wasser mit einem anderen, oder eine Probe mit bekanntem Gehalt mit diesem messen`,
    kitLow: (by) =>
      `ein Test, der durchweg ${by} zu wenig zeigt: dasselbe Wasser mit einem anderen, oder eine Probe mit bekanntem Gehalt mit diesem messen`,
    withSalinity: (moved) =>
      `der Salzgehalt, der ebenfalls abweicht und ${moved} davon mitnimmt: zuerst danach sehen`,
    bag: (holds, typed) =>
      `ein Test des frisch gemischten Wassers: ${holds} statt ${typed} würden es erklären`,
    unlogged: (grams, additive) =>
      `was hineinkam und nicht aufgeschrieben wurde: ${grams} g ${additive} in der Woche würden es erklären`,
    creep: (grams) =>
      `Salz, das als Kruste, Spritzer oder Abschäumung geht: ${grams} g trockenes Salz in der Woche würden es erklären`,
    skeleton: (mgPerCa, typed) =>
      `Kalkrotalgen: ${mgPerCa} statt ${typed} mmol Magnesium je mol abgelagertem Calcium würden es erklären`,
  },

  endsAt: (calcium, magnesium, salinity) =>
    `Das führt zu ${calcium} mg/L Calcium, ${magnesium} mg/L Magnesium und ${salinity} ppt, nachgerechnet von den neuesten Messwerten an mit dem geltenden Plan.`,
  takenBack: (what, by) =>
    `Danach bewegt ein Wechsel Ihres Wassers ${what} um ${by} an einem Tag, weil das, was Sie ansetzen, anders viel davon enthält. Kleinere Wechsel, öfter, bewegen auf einmal weniger.`,
  kitDoubt: (calcium, magnesium) =>
    `Ein Test kann um ${calcium} mg/L Calcium und ${magnesium} mg/L Magnesium danebenliegen (zwei Standardfehler, übliche Praxis): Testen Sie auf halbem Weg noch einmal.`,
  refused: (what) =>
    `Was dorthin führte, wird nicht angeboten: Es käme zu ${what}. Wählen Sie ein Ziel näher am Gemessenen, oder stellen Sie das zuerst ab.`,
  fast: (what, by) => `${what} um ${by} an einem Tag bewegt`,
  alkalinityFirst: (harm, day) =>
    `Davon kommt noch nichts hinein: Wie das Becken läuft, fällt die Alkalinität an Tag ${day} unter ${harm} dKH, und mit mehr Calcium fällt sie schneller. Halten Sie zuerst die Alkalinität („Woran Sie drehen“, „Pläne“), und sehen Sie dann wieder her.`,
  outOfReach:
    'Der Salzgehalt liegt zu weit daneben für Wasserwechsel einiger Wochen: Messen Sie ihn zuerst mit einem anderen Gerät.',
  high: (what, value, limit) =>
    `${what} steht bei ${value}, über Ihren ${limit}; heraus bringen es nur Korallen und Wasserwechsel.`,
  ways: {
    wait: (count) => `Wie es läuft, ist es nach ${dative(count)} wieder in den Grenzen.`,
    leaveOut: (count) =>
      `Bleibt dieses Salz aus den Flaschen weg, ist es nach ${dative(count)} wieder in den Grenzen.`,
    change: (litres, percent, count) =>
      `Werden jede Woche ${litres} L (${percent} %) gewechselt, ist es nach ${dative(count)} wieder in den Grenzen.`,
  },
  noWay: (holds) =>
    `Nichts davon bringt es in einem halben Jahr hinein: Ihr neues Wasser hält selbst ${holds} mg/L. Eine andere Mischung, oder ein Test dieser, kommt zuerst.`,
  leftIn: (what, percent) =>
    `Ihre Flaschen bringen mehr ${what}, als Korallen und Wechsel herausnehmen: Füllen Sie sie mit ${percent} % des Salzes dafür.`,
  weekly: (grams, additive, parts) =>
    `Wasserwechsel allein halten es nicht: Geben Sie jede Woche ${grams} g ${additive} zu, ${parts}.`,
  parts: {
    once: 'auf einmal',
    in: (count) => `in ${count} Teilen`,
    daily: 'ein Siebtel jeden Tag',
  },
  plainOf: (plain, of, salinity) =>
    `Von diesen ${of} L in der Woche sind ${plain} L reines Süßwasser, wenn der Rest wie bisher auf ${salinity} ppt gemischt ist: So viel Salz kommt mit dem herein, was dosiert wird.`,
  strongerBy: (salinity, now) =>
    `Neues Wasser mit ${salinity} statt ${now} ppt ersetzt das Salz, das hinausgeht.`,
  alkalinityLower: (by) =>
    `Nach einem halben Jahr steht die Alkalinität dann ${by} dKH tiefer als beim heutigen Betrieb: Stellen Sie sie nach, wie Ihre Tests es zeigen.`,
  alkalinityHigher: (by) =>
    `Nach einem halben Jahr steht die Alkalinität dann ${by} dKH höher als beim heutigen Betrieb: Stellen Sie sie nach, wie Ihre Tests es zeigen.`,
  promised: (count, what) =>
    `Bei jedem Verbrauch, der für möglich gehalten wird, bleiben ${what} danach ${days(count)} lang in Ihren Grenzen.`,
  promisedBut: (what, day) =>
    `Über kurz oder lang: ${what}, ab Tag ${day} beim ungünstigsten Verbrauch, der für möglich gehalten wird: Testen Sie bis dahin.`,
  notHeldAbove: (what, day) => `${what} wird so nicht gehalten: ab Tag ${day} über Ihrer Grenze.`,
  notHeldBelow: (what, day) => `${what} wird so nicht gehalten: ab Tag ${day} unter Ihrer Grenze.`,
  drift: (what, now, half, whole, by) =>
    `Wird nichts gestellt, geht es mit ${what} von ${now} auf ${half} in 90 Tagen und ${whole} in 180 (± ${by}, wenn die Pumpen ein Zehntel mehr oder weniger geben)`,
  driftLeaves: (drift, day) => `${drift}, außerhalb Ihrer Grenzen an Tag ${day}`,
  driftShares: (drift, shares) => `${drift}: ${shares}.`,
  alkalinityLeaves: (day) =>
    `Die Alkalinität selbst verlässt an Tag ${day} Ihre Grenzen, wie es läuft: Stellen Sie das zuerst, dann fragen Sie noch einmal.`,
  instead: (what, mornings) =>
    `Statt dessen: ${days(mornings)} lang jeden Morgen ${what}. Sulfat verschiebt das Verhältnis von Sulfat zu Chlorid, Chlorid umgekehrt.`,
  changesPlanned:
    'Im Messbuch steht kein Wasserwechsel: Die des Plans wurden als getan angenommen.',
  useAssumed: (use) =>
    `In dieser Zeit wurde zu wenig Alkalinität gemessen: ${use} dKH am Tag sind, was heute vom Verbrauch bekannt ist.`,
  useRead: (use) =>
    `Die Alkalinität des Messbuchs sagt, dass die Korallen anfangs ${use} dKH am Tag nahmen.`,
  notRead: (what) =>
    `Niemand hat es gemessen: ${what}. Dafür stehen die Zahlen des Plans. Testen Sie, bevor Sie etwas zugeben.`,
  pouredSince: (what, by, day) =>
    `${what} wird um ${by} höher gerechnet als am ${day} gemessen: So viel kam laut Messbuch seither hinein und ist noch da. Der nächste Test zeigt es.`,
  changedSince: (what, by, day) =>
    `${what} wird um ${by} niedriger gerechnet als am ${day} gemessen: Laut Messbuch wurde seither Wasser gewechselt, und das neue hält weniger. Der nächste Test zeigt es.`,
  oldReading: (what, count) =>
    `${what} wurde zuletzt vor ${count} Tagen gemessen: Testen Sie, bevor Sie etwas zugeben.`,
  notInIt:
    'Nicht darin: Salzkrusten und Spritzer, nasse Filtersocken, andere Ionen als diese, Futter und dessen Eis. Schutzbrille bei Calciumchlorid: Es wird in Wasser heiß und reizt die Augen; lösen Sie jedes Salz für sich auf.',
};
