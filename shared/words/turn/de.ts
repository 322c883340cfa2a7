import { malAmTag } from '../timesADay';
import type { Words } from '../words';
import type { en } from './en';

const tage = (days: number) => (days === 1 ? 'einen Tag' : `${days} Tage`);
const nach = (days: number) => (days === 1 ? '1 Tag' : `${days} Tagen`);

const FEW = 4;
const testsAm = (mornings: number): string =>
  mornings > FEW ? 'am Tag 3 und von da an jeden zweiten Tag' : 'am Tag 3';

export const de: Words<typeof en> = {
  panel: {
    title: 'Woran Sie drehen',
    trying: 'Am simulierten Becken wird an dem gedreht, was Sie haben …',
    trouble: (why) => `Es ließ sich nicht ausrechnen, woran zu drehen ist: ${why}`,
    tryIt: 'Auf der Werkbank probieren',
    runBy: 'Mein Becken läuft ab jetzt so',
    runsBy:
      'Ihr Becken läuft ab jetzt so. „Wieder nach diesem laufen“ weiter oben nimmt es zurück.',
    full: 'Die Werkbank ist voll: Entfernen Sie dort erst einen Versuch.',
    more: 'Gramm, Grenzen, und wenn eine Pumpe hängt',
    notOwn: (plan) => `Gerechnet für ${plan}. Das haben Sie noch nicht Ihr Becken genannt:`,
    putRight: 'erst richtigstellen.',
    mix: 'Mischen',
    dose: 'Dosieren, sobald es hält',
    dates: 'Bis zu einem Tag',
    within: 'Dort in höchstens, Tage',
    when: 'Wann steht es bei, dKH?',
  },
  name: (target) => `Gedreht auf ${target} dKH`,
  fallName: (target) => `Hinunter auf ${target} dKH`,
  raisedName: (target) => `Angehoben auf ${target} dKH`,
  nothingRuns:
    'Der heutige Plan bringt keine Alkalinität, also ist an nichts zu drehen: Die drei Pläne (unter „Pläne“) beginnen damit, und wie das Wasser erst dorthin kommt, steht unter ihnen.',
  nothingRunsBeside:
    'Der heutige Plan bringt keine Alkalinität, sie fällt also wieder: Beginnen Sie einen der drei Pläne (unter „Pläne“). Was mit einem Plan zuerst hineinkommt, steht unter ihnen und ersetzt diese Gabe, es kommt nicht dazu.',
  noReading:
    'Noch keine Alkalinität gemessen: Damit fängt es an. Tragen Sie zuerst die von heute ein.',
  assumed: (use, by) =>
    `Wie weit zu drehen ist, weiß noch niemand: Den Verbrauch hat niemand gemessen, ${use} ± ${by} dKH am Tag ist der des Plans, auf ein Fünftel genau angenommen. Lassen Sie alles, wie es läuft, bis zwei Tests mit einigen Tagen Abstand es sagen.`,
  raise: (now, target, dose, mornings) =>
    `Von ${now} auf ${target} dKH, und alles, was läuft, bleibt: ${dose} ${mornings === 1 ? 'am ersten Morgen' : `an jedem der ersten ${mornings} Morgen`}, gelöst und langsam hineingegeben. Testen Sie vor der ersten Gabe und ${testsAm(mornings)}; hören Sie bei ${target} auf.`,
  raiseOnce: (now, target, dose) =>
    `Sie steht bei ${now} dKH, gewollt sind ${target}. Alles, was läuft, bleibt; geben Sie ${dose} am ersten Morgen hinein, gelöst und langsam: Von mehr weiß niemand, dass es langsam genug wäre. Testen Sie davor und am nächsten Morgen, schreiben Sie beides auf, und gehen Sie nach dem weiter, was dann gesagt wird.`,
  raiseHolds: (low, high, largest, ph) =>
    `Zum Anheben muss der Verbrauch nicht genau bekannt sein: Bei jedem von ${low} bis ${high} dKH am Tag bewegt es sich um höchstens ${largest} dKH am Tag, und der pH erreicht ${ph}.`,
  raiseAssumed: (low, high, largest, ph) =>
    `Den Verbrauch hat noch niemand gemessen: ${low} bis ${high} dKH am Tag ist der des Plans, auf ein Fünftel angenommen. Bei jedem davon bewegt es sich um höchstens ${largest} dKH am Tag, und der pH erreicht ${ph}; Korallen, die weniger nehmen, sind früher dort, und Ihre Tests sagen es.`,
  fall: {
    nothing: 'nichts dosieren, reines Wasser in die Nachfüllung,',
    goOn: (what) => `weniger dosieren (${what}),`,
    waits: (now, target, soonest, latest, meanwhile, largest) =>
      `Von ${now} hinunter auf ${target} dKH: ${meanwhile} ${latest === undefined ? `${soonest} Tage oder länger` : soonest === latest ? `etwa ${tage(soonest)}` : `${soonest} bis ${latest} Tage`}, und jeden Tag testen; sie fällt um höchstens ${largest} dKH am Tag. Bei ${target} weiter wie bisher: Was sie dann hält, folgt aus diesen Tests.`,
    tooSlow: (now, target) =>
      `Von ${now} auf ${target} dKH kommt sie binnen zwei Monaten nicht herunter, auch wenn nichts dosiert wird: Wechseln Sie Wasser mit einem Salz, das weniger enthält.`,
  },
  assumedFall: (use, by) =>
    `Wie weit auf Dauer zu drehen ist, weiß noch niemand: Den Verbrauch hat niemand gemessen, ${use} ± ${by} dKH am Tag ist der des Plans, auf ein Fünftel genau angenommen. Die Tests auf dem Weg nach unten sagen es.`,
  stray: (newest, level, by) =>
    `Die neueste Messung, ${newest} dKH, passt nicht zu den ${level} ± ${by} dKH, auf die die Messungen davor führen. Testen Sie dasselbe Wasser heute noch einmal, bevor Sie an etwas drehen oder etwas hineingeben: Tragen Sie ein, was herauskommt, daraus folgt das Weitere.`,
  tooHigh: (high) =>
    `Sie steht über Ihren ${high} dKH: Geben Sie von Hand nichts hinein, was Alkalinität bringt, und keine Säure dagegen. Die Korallen bringen sie herunter, um ihren Verbrauch, und Wasserwechsel mit einem Salz, das weniger hat. Testen Sie jeden Tag.`,
  torn: (level, by) =>
    `Die Messungen widersprechen sich: Wo das Wasser steht, ist nicht besser bekannt als ${level} ± ${by} dKH. Testen Sie dasselbe Wasser zweimal, bevor Sie an etwas drehen.`,
  leapt:
    'Noch nichts ändern und nichts hineingeben: Was das Wasser zwischen zwei Messungen auf einmal bewegt hat, steht nicht im Messbuch und kann wiederkommen. Suchen Sie es und tragen Sie es nach, oder messen Sie weiter: Ab drei Messungen seither richtet es sich nach ihnen.',
  testFirst: (date) =>
    `Die neueste Messung ist vom ${date}, und der nächste Test ist überfällig: Testen Sie zuerst, daraus folgt das Weitere.`,
  turnedSince: (turned, read) =>
    `Gedreht wurde am ${turned}, nach der Messung vom ${read}: Was dazu hineinzugeben oder später zu tun ist, steht in den Notizen des Messbuchs. Testen Sie zuerst; daraus folgt, woran als Nächstes zu drehen ist.`,
  noted: (turn) => `Gedreht: ${turn}`,
  byThatReading: (turn) => `Nach dieser Messung wäre es gewesen: ${turn}`,
  byThatLevel: (turn) => `Von diesem Stand aus wäre es: ${turn}`,
  byThatUse: (turn) => `Nach diesem Verbrauch wäre es: ${turn}`,
  handGoesOn: (doses) =>
    `Was Sie laut Messbuch von Hand hineingeben (${doses}), geht weiter: Es ist mitgerechnet.`,
  handInParts: (parts, before) =>
    `Was Sie von Hand hineingeben, bewegt allein das Wasser schneller, als Ihre Grenzen zulassen. Machen Sie damit in kleineren Teilen weiter: ${parts} statt ${before}.`,
  handNoted:
    'Schreiben Sie jede Gabe mit ihren Gramm ins Messbuch: Was kommt, wird aus dem gerechnet, was hineinkam.',
  fewPours:
    'Was Sie von Hand hineingegeben haben, ist noch kein Rhythmus, an dem zu drehen wäre: Dazu gehören drei Gaben, jede mit ihren Gramm aufgeschrieben.',
  handPauses: 'Geben Sie bis dahin auch von Hand nichts hinein.',
  turn: {
    pump: (name, from, to) => `Drehen Sie „${name}“ von ${from} auf ${to} mL am Tag`,
    pumpFirst: (name, from, less, days, to) =>
      `Drehen Sie „${name}“ von ${from} auf ${less} mL am Tag für ${tage(days)}, dann auf ${to}`,
    with: (name, to) => `„${name}“ mit auf ${to}`,
    withFirst: (name, less, to) => `„${name}“ mit auf ${less}, dann ${to}`,
    mix: (from, to) =>
      `Mischen Sie die Nachfüllung mit ${to} g/L statt ${from}: den Behälter leeren und neu füllen`,
    mixFirst: (from, less, days, to) =>
      `Mischen Sie die Nachfüllung mit ${less} g/L statt ${from} für ${tage(days)}, dann mit ${to}: den Behälter jedes Mal leeren und neu füllen`,
    drip: (from, to) =>
      `Drehen Sie den Tropf des Kalkreaktors von ${from} auf ${to} L in der Stunde`,
    dripFirst: (from, less, days, to) =>
      `Drehen Sie den Tropf des Kalkreaktors von ${from} auf ${less} L in der Stunde für ${tage(days)}, dann auf ${to}`,
    hand: (additive, rhythm, from, to) =>
      `Geben Sie ${rhythm} ${to} g ${additive} hinein statt ${from} g`,
    handFirst: (additive, rhythm, from, less, days, to) =>
      `Geben Sie ${rhythm} ${less} g ${additive} hinein, ${tage(days)} lang, dann ${to} g, statt ${from} g`,
    handBefore: (from, additive, rhythm) =>
      [rhythm, `${from} g`, additive].filter(Boolean).join(' '),
    handInstead: (additive, rhythm, before, to) =>
      `Geben Sie ${rhythm} ${to} g ${additive} hinein statt ${before}`,
    handInsteadFirst: (additive, rhythm, before, less, days, to) =>
      `Geben Sie ${rhythm} ${less} g ${additive} hinein, ${tage(days)} lang, dann ${to} g, statt ${before}`,
    handLater: (additive, rhythm, days, to) =>
      `Geben Sie ${tage(days)} lang nichts hinein (${additive}), dann ${rhythm} ${to} g`,
    handStops: (additive, from) =>
      `Geben Sie nichts mehr von Hand hinein (${additive}, bisher ${from} g)`,
    rhythm: (days) => (days === 1 ? 'jeden Tag' : days > 1 ? `alle ${days} Tage` : malAmTag(days)),
    channel: (name, other, to) =>
      `Lassen Sie alles, wie es läuft, und nehmen Sie einen Kanal dazu: „${name}“ und „${other}“, je ${to} mL am Tag`,
    channelFirst: (name, other, less, days, to) =>
      `Lassen Sie alles, wie es läuft, und nehmen Sie einen Kanal dazu: „${name}“ und „${other}“, je ${less} mL am Tag für ${tage(days)}, dann ${to}`,
    channelLater: (name, other, days, to) =>
      `Lassen Sie alles für ${tage(days)}, wie es läuft, während das Wasser fällt, und nehmen Sie dann einen Kanal dazu: „${name}“ und „${other}“, je ${to} mL am Tag`,
    leavePump: (name, from) => `Lassen Sie „${name}“ bei ${from} mL am Tag`,
    leaveMix: (from) => `Lassen Sie die Nachfüllung bei ${from} g/L`,
    leaveDrip: (from) => `Lassen Sie den Tropf des Kalkreaktors bei ${from} L in der Stunde`,
    leaveHand: (additive, rhythm, from) =>
      `Geben Sie weiter ${rhythm} ${from} g ${additive} hinein`,
    arrives: (level, target, days) => `${level} → ${target} dKH in ${nach(days)}`,
    near: (level, target) => `${level} dKH liegen nahe bei ${target}`,
    holds: (level, target) => `${level} dKH bleiben bei ${target}`,
    range: (low, high, unit) => `Spanne ${low}–${high} ${unit}`,
    units: {
      pump: 'mL am Tag',
      channel: 'mL am Tag',
      mix: 'g/L',
      drip: 'L in der Stunde',
      hand: 'g jedes Mal',
    },
  },
  whyNotOwn: {
    dump: (litres) =>
      `Eine stärkere Mischung wird nicht angeboten: Wenn die Nachfüllung hängt, bringt der ganze Behälter das Becken über den pH, der schadet, oder über Ihre höchste Alkalinität; mit höchstens ${litres} L davon geschähe das nicht.`,
    outOfReach: (rests) =>
      `Was schon läuft, bringt das Wasser, so weit es sich drehen lässt, bei ${rests} dKH zur Ruhe.`,
    breach: (what, value, limit, day) =>
      `Zu drehen, was schon läuft, wird nicht angeboten: Bei einem Verbrauch, den das Messbuch zulässt, erreicht ${what} ${value} (Ihre Grenze ${limit}), zuerst am Tag ${day}.`,
  },
  unlinked: (pumps, calcium, together, day) =>
    `Die Flaschen sind getrennt: ${pumps}. Calcium steht dann an Tag ${day} bei ${calcium} mg/L; gemeinsam gedreht wären es ${together}.`,
  unlinkFirst: (calcium, limit) =>
    `Calcium wurde mit ${calcium} mg/L gemessen, über Ihren ${limit}: Nehmen Sie den Haken bei „Die Flaschen eines Paares gemeinsam drehen“ weg, dann bleibt die Flasche, die es bringt, wie sie ist.`,
  stays: (name, ml) => `„${name}“ bleibt bei ${ml} mL am Tag`,
  link: 'Die Flaschen eines Paares gemeinsam drehen',
  linkWhy:
    'Ohne Haken wird nur die Flasche gedreht, die Alkalinität bringt: Was die andere bringt, bleibt, und Calcium geht seinen eigenen Weg.',
  steer: {
    title: 'Calcium, Magnesium und Salzgehalt dazu',
    trying: 'Calcium, Magnesium und Salzgehalt werden mitgerechnet …',
    above: (what, level, limit) => `${what} steht bei ${level}, über Ihren ${limit}.`,
    below: (what, level, limit) => `${what} steht bei ${level}, unter Ihren ${limit}.`,
    rises: (what, limit, day) =>
      `${what} steigt an Tag ${day} über Ihre ${limit}, wie das Becken läuft.`,
    falls: (what, limit, day) =>
      `${what} fällt an Tag ${day} unter Ihre ${limit}, wie das Becken läuft.`,
    testFirst: 'Testen Sie es mit der Alkalinität: Was hineinmuss, folgt daraus.',
    asOne: (days, most) =>
      `Beginnen Sie damit zugleich mit der Drehung: Beides wurde als eines über ${days} Tage gerechnet, bei jedem Verbrauch, den das Messbuch zulässt, und die Alkalinität bewegt sich um höchstens ${most} dKH am Tag.`,
    alone: (days, most) =>
      `Über ${days} Tage gerechnet, bei jedem Verbrauch, der für möglich gilt: Die Alkalinität bewegt sich um höchstens ${most} dKH am Tag.`,
    ends: (calcium, magnesium, salinity) =>
      `Ist es getan, hält das Wasser ${calcium} mg/L Calcium, ${magnesium} mg/L Magnesium und ${salinity} ppt.`,
    stillOutside: (what, end) =>
      `${what} liegt dann immer noch außerhalb Ihrer Grenze von ${end}: Das ist nur ein Teil des Weges. Testen Sie bis dahin wieder, und machen Sie von dort aus weiter.`,
    lower: (by, than) =>
      `Die Alkalinität endet dadurch ${by} dKH tiefer als ${than}: Mit mehr Calcium nehmen Korallen mehr auf. Ihre Tests zeigen es.`,
    higher: (by, than) =>
      `Die Alkalinität endet dadurch ${by} dKH höher als ${than}. Ihre Tests zeigen es.`,
    thanTurn: 'durch die Drehung allein',
    thanNow: 'wie das Becken läuft',
    sooner: {
      above: (what, limit, day) =>
        `${what} liegt dadurch ab Tag ${day} über Ihren ${limit}: Testen Sie bis dahin.`,
      below: (what, limit, day) =>
        `${what} liegt dadurch ab Tag ${day} unter Ihren ${limit}: Testen Sie bis dahin.`,
    },
    passes: (what, value, limit, day) =>
      `Damit kann ${what} an Tag ${day} Ihre Grenze von ${limit} überschreiten und auf ${value} kommen, beim Verbrauch, der dafür am schlimmsten ist: Testen Sie vorher, und drehen Sie dann nach.`,
    careful:
      'Lösen Sie jedes Salz für sich, und gießen Sie keines binnen einer Stunde neben Natron oder Soda hinein: Zusammen fallen sie als Kalk aus. Schutzbrille bei Calciumchlorid: Es wird in Wasser heiß und reizt die Augen.',
    noWayBeside:
      'Wie es herunterkommt, ändert sich mit dieser Drehung: Drehen Sie zuerst, testen Sie es noch einmal, und sehen Sie dann unter Saison nach.',
  },
  pour: (dose, mornings) =>
    `Dazu ${dose} ${mornings === 1 ? 'am ersten Morgen' : `an jedem der ersten ${mornings} Morgen`}, gelöst und langsam hineingegeben. Testen Sie außer zu den oben genannten Tagen vor der ersten Gabe und ${testsAm(mornings)}; hören Sie am Ziel auf.`,
  grams: (grams, additive, litres) => `${grams} g ${additive} (für ${litres} L)`,
  scoops: (scoops) => ` (${scoops} gestrichene Löffel)`,
  about: (level) =>
    `Bei jedem Verbrauch, den das Messbuch zulässt, steht es dann bei ${level} dKH.`,
  between: (low, high) =>
    `Bei jedem Verbrauch, den das Messbuch zulässt, liegt sie dann zwischen ${low} und ${high} dKH.`,
  moves: (largest, limit, ph) =>
    `Die Alkalinität bewegt sich um höchstens ${largest} dKH am Tag (Ihre Grenze ${limit}); der pH erreicht ${ph}.`,
  swings: (largest, limit, ph) =>
    `Schon Licht und Dunkel bewegen die Alkalinität um mehr als Ihre ${limit} dKH am Tag, auch so, wie das Becken heute läuft; mit dem Drehen sind es höchstens ${largest}. Der pH erreicht ${ph}.`,
  promised: (low, high, days) =>
    `Von da an innerhalb Ihrer ${low}–${high} dKH, bis zum Tag ${days} bei jedem Verbrauch, den das Messbuch zulässt.`,
  onItsWay: (days) =>
    `Bis dahin ist sie unterwegs: Bis zum Tag ${days} wird bei jedem Verbrauch, den das Messbuch zulässt, keine Grenze weiter überschritten, als wenn Sie nichts drehen.`,
  endedBy: (what, value, limit, day) =>
    `Dort endet es, weil ${what} am Tag ${day} Ihre Grenze von ${limit} überschreitet und auf ${value} kommt: Sehen Sie vorher danach.`,
  also: (what, value, limit, day) =>
    `${what} überschreitet am Tag ${day} Ihre Grenze von ${limit} und kommt auf ${value}, wie auch ohne das Drehen: Das braucht etwas Eigenes.`,
  unread: (what) =>
    `Niemand hat es gemessen: ${what}. Dafür steht die Zahl des Plans. Messen Sie es beim nächsten Mal mit der Alkalinität; was darüber gesagt wird, folgt daraus.`,
  refused: {
    untold:
      'Es wird keine Drehung angeboten: Diese Messungen steigen um mehr, als dosiert wird, und sagen nicht, was das Becken verbraucht. Sehen Sie zuerst nach, ob eine Pumpe weiterlief und wie weit ihre Flasche gefallen ist, ob etwas hineinkam, das im Messbuch fehlt (tragen Sie es ein), und ob der Test aus einer neuen Flasche ist.',
    outOfReach: (target, rests) =>
      `Kein Drehen: Nichts, was läuft, und auch kein weiterer Kanal hält ${target} dKH; am nächsten kommt es bei ${rests} zur Ruhe.`,
    breach: (what, value, limit, day) =>
      `Kein Drehen angeboten: Bei einem Verbrauch, den das Messbuch zulässt, erreicht ${what} ${value} (Ihre Grenze ${limit}), zuerst am Tag ${day}.`,
    offTarget: (ends, target) =>
      `Kein Drehen angeboten: Was jetzt ${target} dKH halten würde, ist nach vier Wochen bei ${ends}.`,
    dump: (litres) =>
      `Kein Drehen angeboten: Wenn die Nachfüllung hängt, bringt ein Behälter der stärkeren Mischung das Becken über den pH, der schadet, oder über Ihre höchste Alkalinität. Höchstens ${litres} L davon dürfen dort stehen.`,
    knownUse: (by) =>
      `Es ginge, wenn der Verbrauch auf ± ${by} dKH am Tag bekannt wäre: zuerst mehr messen.`,
    target: (dkh) => `Es ginge für ${dkh} dKH.`,
    limit: (dkh) =>
      `Es ginge mit ${dkh} dKH am Tag als Ihrer Grenze (auf der Werkbank, „Ihre Grenzen“); auf die hellen Stunden verteilt macht die Dosis den Tagesgang kleiner.`,
    calcium:
      'So, wie das Becken jetzt läuft, geht das Calcium zur Neige, und Korallen, denen es fehlt, nehmen weniger Alkalinität: Bringen Sie auch Calcium, wie zwei Dosierpumpen es tun (einer der drei Pläne, unter „Pläne“), und drehen Sie dann.',
    threePlans: 'Die drei Pläne (unter „Pläne“) fangen neu an und können es vielleicht.',
    test: 'Ändern Sie bis dahin nichts auf einmal, und testen Sie jeden Tag.',
  },
  byDay: {
    inTime: (target, days, asked) =>
      `Ja: bei ${target} dKH nach ${nach(days)}, in den gefragten ${asked}.`,
    late: (target, days, asked, at) =>
      `Nicht in ${asked} Tagen innerhalb Ihrer Tagesgrenze: Dann steht es bei ${at} dKH, und bei ${target} nach ${days}.`,
  },
  reaches: {
    on: (dkh, days) =>
      `So, wie das Becken jetzt läuft, steht es in etwa ${nach(days)} bei ${dkh} dKH`,
    within: (soonest, latest) =>
      `, in ${soonest === latest ? String(soonest) : `${soonest} bis ${latest}`} bei jedem Verbrauch, den das Messbuch zulässt.`,
    orNever: (soonest) =>
      `, frühestens in ${soonest}; bei einem anderen Verbrauch, den das Messbuch zulässt, nie.`,
    never: (dkh, days, ends) =>
      `So, wie das Becken jetzt läuft, steht es in ${days} Tagen nicht bei ${dkh} dKH: Es endet bei ${ends}.`,
  },
};
