import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  panel: {
    title: 'Hat es so lange gereicht, wie es sollte?',
    why: 'Aus dem, was eine Flasche oder der Nachfüllbehälter in einigen Tagen verloren hat: was gegeben wurde, gegen das, was eingestellt ist. Lesen Sie den Stand zweimal ab, oder zählen Sie die Tage von voll bis leer.',
    vessel: 'Aus',
    reservoir: 'dem Nachfüllbehälter',
    bottle: (name) => `der Flasche von „${name}“`,
    used: (unit) => `gingen, ${unit}`,
    days: 'in, Tage',
    ask: 'Gegen den Plan halten',
    trying: 'Der Plan läuft über dieselben Tage …',
    trouble: (why) => `Es ließ sich nicht berechnen: ${why}`,
    tryIt: 'Auf der Werkbank probieren, wie es wirklich läuft',
    full: 'Die Werkbank ist voll: Entfernen Sie dort erst einen Versuch.',
    none: 'Der heutige Plan hat keine Dosierpumpe und keine Nachfüllung.',
  },
  name: (vessel) => `Wie es wirklich kommt: aus ${vessel}`,
  nothingSet: (vessel) =>
    `Nach dem heutigen Plan geht aus ${vessel} nichts hinaus: Berichtigen Sie zuerst den Plan auf der Werkbank.`,
  pump: (name, ratio, low, high, given, set) =>
    `„${name}“ gibt das ${ratio}-Fache des Eingestellten (${low}–${high}): ${given} mL am Tag statt ${set}.`,
  topOff: (ratio, low, high, given, set) =>
    `Die Nachfüllung bringt das ${ratio}-Fache dessen, womit der Plan rechnet (${low}–${high}): ${given} L am Tag statt ${set}.`,
  asSet: (ratio, low, high) =>
    `Kein Unterschied, den diese Tage zeigen können: das ${ratio}-Fache des Eingestellten, und alles von ${low} bis ${high} ist möglich. Eine längere Zeit würde mehr zeigen.`,
  due: (litres, unit, setDays, days) =>
    `Nach dem Plan sollten ${litres} ${unit} ${setDays} Tage reichen; es waren ${days}. Eine Füllung gilt als auf 3 % bekannt, der Tag auf einen halben.`,
  more: (by, giveOrTake, truly, read) =>
    `Beim Lesen des Messbuchs kam zu wenig hinein: Die Korallen verbrauchen ${by} ± ${giveOrTake} dKH am Tag mehr, ${truly} statt ${read}.`,
  less: (by, giveOrTake, truly, read) =>
    `Beim Lesen des Messbuchs kam zu viel hinein: Die Korallen verbrauchen ${by} ± ${giveOrTake} dKH am Tag weniger, ${truly} statt ${read}.`,
  moreAssumed: (by, giveOrTake) =>
    `Damit kommen ${by} ± ${giveOrTake} dKH am Tag hinein, von denen der Plan nichts weiß. Den Verbrauch hat noch niemand gemessen: Warten Sie auf Tests, oder tragen Sie ihn auf der Werkbank ein.`,
  lessAssumed: (by, giveOrTake) =>
    `Damit fehlen ${by} ± ${giveOrTake} dKH am Tag, mit denen der Plan rechnet. Den Verbrauch hat noch niemand gemessen: Warten Sie auf Tests, oder tragen Sie ihn auf der Werkbank ein.`,
  calciumUp: (mg) =>
    `Alkalinität bringt sie nicht; Calcium steigt neben dem, was der Plan sagt, um ${mg} mg/L in der Woche.`,
  calciumDown: (mg) =>
    `Alkalinität bringt sie nicht; Calcium fällt neben dem, was der Plan sagt, um ${mg} mg/L in der Woche.`,
  pumpCause:
    'Es liegt an der Pumpe, ihrem Schlauch, ihrer Einstellung oder an einer Flasche, die nicht voll war: Eine Dosierpumpe richtet sich nicht nach dem Becken, durstigere Korallen ändern nichts daran, wie lange eine Flasche reicht.',
  jug: (set, would) =>
    `Um sicher zu sein, lassen Sie sie eine Minute in einen Messzylinder laufen: ${set} mL wären wie eingestellt, ${would} mL würden es erklären.`,
  jugSpread: (ml) =>
    `Um sicher zu sein, lassen Sie eine Tagesdosis in einen Messzylinder laufen: ${ml} mL würden es erklären.`,
  putRight: (given, set, right, goesOn) =>
    `Das Becken lebt von dem, was es wirklich bekommt. Wenn Sie die Pumpe richtigstellen, stellen Sie sie auf ${given} mL am Tag: Bliebe es bei ${set}, stünde die Alkalinität nach einer Woche bei ${right} dKH statt bei ${goesOn}.`,
  topOffCause: (share) =>
    `Die Nachfüllung richtet sich nach dem Wasserstand, hier ist also das Becken durstiger: Es verdunsten ${share} % mehr, als der Plan hat.`,
  topOffLess: (share) =>
    `Die Nachfüllung richtet sich nach dem Wasserstand, hier ist also das Becken weniger durstig: Es verdunsten ${share} % weniger, als der Plan hat.`,
  leak: (ppt) =>
    `Es sei denn, Beckenwasser geht verloren (ein Leck, Salzkrusten, ein nasser Abschäumer): Dann fällt die Salinität um etwa ${ppt} ppt in der Woche. Messen Sie sie; Dampf lässt das Salz zurück.`,
  byHand:
    'Es sei denn, jemand hat von Hand nachgefüllt, oder der Sensor ruft später als er soll: Sehen Sie nach, ob das Wasser an der Marke steht.',
  runsOut: {
    reservoir: 'das Reservoir',
    bottle: (name) => `die Flasche von „${name}“`,
    by: (what, date, days, asSet) =>
      `Zuerst leer: ${what}, ${days === 0 ? 'heute' : days === 1 ? 'in einem Tag' : `in ${days} Tagen`} frühestens (${date}; wie eingestellt ${asSet}).`,
    since: (what, date) =>
      `Zuerst leer: ${what}, vielleicht schon seit ${date}: Sehen Sie nach, und zählen oder füllen Sie.`,
  },
  orders: {
    title: 'Wann bestellen',
    why: 'Was Sie von dem übrig haben, was das Becken verbraucht, und bis wann zu bestellen ist, damit es kommt, bevor es ausgehen kann. Geben Sie ein, was übrig ist („450 g“, „3 kg“); ab diesem Tag wird gezählt.',
    salt: 'Salzmischung',
    tests: 'Alkalinitätstests im Testkasten',
    left: (what, unit) => (unit === '' ? `Übrig: ${what}` : `Übrig, ${unit}: ${what}`),
    shop: 'Eine Bestellung braucht, Tage',
    trying: 'Der Plan läuft zwei Wochen …',
    nothing: 'Der heutige Plan verbraucht weder Pulver noch Salz.',
    uses: (perDay, perMonth, least, most) =>
      `${perDay} g am Tag, ${perMonth} g im Monat (${least}–${most} g am Tag)`,
    usesLittle: (perMonth, least, most) =>
      `${perMonth} g im Monat (${least}–${most}); was auf einen Tag kommt, zeigt keine Waage: Gewogen wird für die Flasche`,
    lasts: (years) =>
      `Noch nichts zu bestellen: Auch wenn am meisten davon weggeht, reicht es ${years} Jahre.`,
    usesTests: (perWeek, least, most) =>
      `${perWeek} in der Woche nach dem Messbuch (${least}–${most})`,
    notCounted: 'Noch nicht gezählt.',
    by: (day, soonest, latest, asSet) =>
      `Bestellen bis ${day}: es kann zwischen ${soonest} und ${latest} ausgehen, wie eingestellt am ${asSet}.`,
    now: (soonest, latest, asSet) =>
      `Jetzt bestellen: es kann zwischen ${soonest} und ${latest} ausgehen, wie eingestellt am ${asSet}.`,
    outAlready: (since) =>
      `Jetzt bestellen: es kann seit ${since} ausgegangen sein. Zählen Sie noch einmal.`,
    never: 'gar nicht',
    counted: (day) => `Gezählt am ${day}.`,
    doubt:
      'Die Spanne ist die von 20 % mehr oder weniger aus jeder Pumpe, 40 % der Verdunstung und 20 % des gewechselten Volumens (gängige Praxis, zwei Standardfehler), jedes Pulver dabei dem Verbrauch bis an die Enden seines Zweifels nachgestellt; Tests danach, wie oft das Messbuch sie hat, mindestens wöchentlich. Wachsende Korallen nehmen mehr: zählen Sie jeden Monat neu.',
  },
};
