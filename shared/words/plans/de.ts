import type { Words } from '../words';
import type { en } from './en';

const FEW = 4;
const testsAm = (mornings: number): string =>
  mornings > FEW ? 'am Tag 3 und von da an jeden zweiten Tag' : 'am Tag 3';

export const de: Words<typeof en> = {
  ways: {
    limewater: 'Zuerst Kalkwasser',
    twoPart: 'Zwei Dosierpumpen',
    changesAlone: 'Nur Wasserwechsel',
    changesOtherSalt: 'Wasserwechsel mit anderem Salz',
    partOne: 'Teil eins: Karbonat',
    partTwo: 'Teil zwei: Calcium',
    aiming: (way, dkh) => `${way}, ${dkh} dKH`,
  },
  panel: {
    title: 'Ein Plan, der sie hält',
    work: 'Drei Pläne ausarbeiten',
    trying:
      'Dosen werden am simulierten Becken probiert: drei Wege, jeder über Wochen nachgespielt. Das dauert einige Sekunden …',
    progress: 'Pläne werden ausgearbeitet',
    stop: 'Anhalten',
    forUse: (use, by, target) => `Für ${use} ± ${by} dKH am Tag, um ${target} dKH zu halten.`,
    forTypedUse: (use, by, target) =>
      `Für ${use} ± ${by} dKH am Tag, um ${target} dKH zu halten. Diesen Verbrauch hat niemand gemessen: Es ist der der Werkbank, auf ein Fünftel genau angenommen. Messen Sie mehr, bevor Sie ihm trauen.`,
    trouble: (why) => `Es ließ sich kein Plan machen: ${why}`,
    before: 'Bevor Sie mischen',
    runsBy: (plan) =>
      `Ihr Becken läuft ab jetzt nach „${plan}“, und das Messbuch wird von heute an so gelesen. „Wieder nach diesem laufen“ oben nimmt es zurück.`,
    gettingThere: (plan) => `Der Weg dorthin: ${plan}`,
    tryingCorrections: 'Korrekturen werden probiert …',
    raisedWith: 'Ein zu niedriger Wert wird angehoben mit',
    bicarbonate: 'Hydrogencarbonat (der pH bewegt sich kaum)',
    soda: 'Soda (der pH steigt)',
  },
  offer: {
    promised: (low, high, days) =>
      `Innerhalb Ihrer ${low}–${high} dKH und Ihrer anderen Grenzen für ${days} Tage, bei jedem Verbrauch, den das Messbuch zulässt.`,
    promisedBut: (low, high, days, what) =>
      `Innerhalb Ihrer ${low}–${high} dKH für ${days} Tage, bei jedem Verbrauch, den das Messbuch zulässt. Außerhalb Ihrer Grenzen, wie das Becken heute läuft, und damit nicht weiter draußen: ${what}.`,
    testBy: (days) =>
      `Messen Sie bis zum Tag ${days} wieder, auch wenn die nächste Messung des Messbuchs später ist: Darüber hinaus ist nichts zugesagt.`,
    onTarget: (target, within, inHundred) =>
      `Ohne weiteren Test bleibt jeder Tag von der ersten bis zur vierten Woche in etwa ${inHundred} von 100 solchen Becken höchstens ${within} dKH neben ${target}: Testen Sie, wenn das Messbuch es sagt, und stellen Sie danach nach.`,
    breaks: (what, value, limit, day) =>
      `Nicht angeboten: Bei einem Verbrauch, den das Messbuch zulässt, erreicht ${what} ${value} (Ihre Grenze ${limit}), zuerst am Tag ${day}.`,
    offTarget: (ends, target) => `Nicht angeboten: Er endet bei ${ends} dKH, nicht bei ${target}.`,
    dumpHarms: (harm) =>
      `Das liegt über pH ${harm}, der schadet: zwei unabhängige, geprüfte Abschaltungen an der Pumpe.`,
    noMoreThan: (litres) =>
      `Davon dürfen höchstens ${litres} L im Behälter stehen: Alles auf einmal bleibt dann unter dem pH, der schadet, und unter Ihrer höchsten Alkalinität.`,
    dumpAbove: (high) =>
      `Das liegt über Ihren ${high}, aber unter dem pH, der schadet: zwei unabhängige, geprüfte Abschaltungen an der Pumpe.`,
    dump: 'Nicht angeboten: Wenn die Nachfüllung hängt, bringt ihr eigener Behälter das Becken über den pH, der schadet, oder über Ihre höchste Alkalinität.',
    keepsFor: (days) => `Er hält jede Grenze ${days === 1 ? '1 Tag' : `${days} Tage`} lang.`,
    wayOut:
      'Halten Sie einen Wert, der weiter von Ihren Grenzen liegt, verschieben Sie die Grenzen (auf der Werkbank, „Ihre Grenzen“), oder testen Sie erst öfter, damit der Verbrauch besser bekannt ist.',
    wayOutChanges:
      'Wechseln Sie weniger Wasser, und lassen Sie einen der anderen Pläne den Rest bringen.',
    wayOutDump:
      'Nehmen Sie eine schwächere Mischung oder einen kleineren Behälter, und bringen Sie den Rest mit Pumpen.',
    nearest: {
      knownUse: (by: string) =>
        `Es ginge, wenn der Verbrauch auf ± ${by} dKH am Tag bekannt wäre: zuerst mehr messen.`,
      target: (dkh: string, by: string) =>
        `Es ginge bei ${dkh} dKH, wenn der Verbrauch auf ± ${by} dKH am Tag bekannt ist.`,
      roomCo2: (ppm: string) =>
        `Es ginge mit höchstens ${ppm} ppm CO₂ im Raum: lüften, oder den Abschäumer Außenluft ziehen lassen.`,
      otherWay: (title: string) => `„${title}“ wird angeboten.`,
    },
    mix: 'Mischen',
    dose: 'Dosieren',
    nothing: 'Nichts.',
    ifStuck: (hour, ph, dkh) =>
      `Wenn die Nachfüllung hängt und der ganze Behälter hineinläuft (am schlimmsten um ${hour}:00): pH ${ph}, ${dkh} dKH.`,
    ifPumpSticks: (name, dkh, high, minutes, ml, days) =>
      `Bleibt die Pumpe von „${name}“ hängen, überschreitet die Alkalinität Ihre ${high} dKH nach ${minutes} min Laufzeit und endet bei ${dkh} dKH, wenn die Flasche leer ist. Nie mehr als ${ml} mL (${days} Tage Dosierung) hinein, dann bleibt selbst das darunter.`,
    rehearse: 'Proben',
    monthly: (all) => `Ein Monat verbraucht: ${all}.`,
    noneMonthly: 'Ein Monat verbraucht: nichts.',
    whatElse: 'Was der Versuch sonst noch sagt',
    choose: 'Damit dorthin',
    toBench: 'Auf die Werkbank',
    card: 'Karte machen',
    runBy: 'Mein Becken läuft ab jetzt so',
    taken: (plan) => `Ab jetzt: ${plan}`,
    forItsCard: 'Wählen Sie „Damit dorthin“ für seine Karte oder damit das Becken so läuft.',
    full: 'Die Werkbank ist voll: Entfernen Sie dort zuerst einen Versuch.',
  },
  correction: {
    none: (now) => `Das Wasser steht bei ${now} dKH, wo es sein soll: keine Korrektur.`,
    handStops: (doses) =>
      `Der Plan ersetzt, was Sie laut Messbuch von Hand hineingeben (${doses}): Hören Sie an dem Tag damit auf, an dem Sie ihn beginnen.`,
    noReading: 'Noch keine Messung der Alkalinität: Die erste sagt, ob etwas zu korrigieren ist.',
    risesTooFast: (now, target, most) =>
      `Von ${now} auf ${target} dKH steigt sie schon durch die Dosierung des Plans um mehr als Ihre ${most} dKH am Tag: Beginnen Sie mit der Hälfte davon, geben Sie nichts daneben hinein, und messen Sie jeden Tag.`,
    fallsTooFast: (now, target, most) =>
      `Von ${now} auf ${target} dKH fällt sie selbst mit der ganzen Dosierung des Plans um mehr als Ihre ${most} dKH am Tag: Beginnen Sie mit der ganzen, und messen Sie jeden Tag.`,
    tooHighPh: (now, target, additive, limit) =>
      `Keine tägliche Dosis ${additive} führt von ${now} auf ${target} dKH, ohne den pH über Ihre ${limit} zu heben: Heben Sie sie mit Natriumhydrogencarbonat, das hebt ihn weniger.`,
    tooHighPhAnyway: (now, target, limit) =>
      `Auf dem Weg von ${now} auf ${target} dKH übersteigt der pH Ihre ${limit}, was auch hineingegossen wird: Frischere Luft oder ein tieferes Ziel kommt zuerst.`,
    rises: (now, target, days, largest) =>
      `Die Dosierung des Plans bringt sie allein von ${now} auf ${target} dKH, innerhalb von ${days === 1 ? 'einem Tag' : `${days} Tagen`}: Geben Sie nichts zu. Sie bewegt sich um höchstens ${largest} dKH am Tag.`,
    raise: (now, target, dose, days) =>
      `Beginnen Sie heute mit der Dosierung des Plans. Daneben, von ${now} auf ${target} dKH: ${dose} ${days === 1 ? 'am ersten Morgen' : `an jedem der ersten ${days} Morgen`}, gelöst und langsam hineingegossen. Messen Sie, außer wenn es ohnehin ansteht, vor dem ersten Guss und ${testsAm(days)}; Schluss bei ${target}.`,
    raiseOnce: (now, target, dose) =>
      `Beginnen Sie heute mit der Dosierung des Plans. Die Alkalinität steht bei ${now} dKH, gewollt sind ${target}: Daneben ${dose} am ersten Morgen, gelöst und langsam hineingegossen; von mehr weiß niemand, dass es langsam genug wäre. Messen Sie davor und am nächsten Morgen, schreiben Sie beides auf, und fragen Sie neu.`,
    movesAnyway: (limit) =>
      `So weit fällt oder schwankt sie bei Tag und Nacht von selbst; durch die Gabe steigt sie von einem Tag zum nächsten um höchstens Ihre ${limit} dKH.`,
    ends: (giveOrTake, low, high) =>
      `Weicht der Verbrauch um ${giveOrTake} dKH am Tag ab, steht sie danach irgendwo zwischen ${low} und ${high}: Die Messung an Tag 3 sagt es.`,
    stopsShort:
      'Mehr Morgen könnten Ihren Bereich verlassen: Messen Sie danach, und gehen Sie von der Messung aus weiter.',
    unsure: (now, target, giveOrTake) =>
      `Von ${now} auf ${target} dKH lässt sich keine Dosis nennen: Der Verbrauch ist nur auf ± ${giveOrTake} dKH am Tag bekannt, und ist er um so viel kleiner, verlässt schon eine Dosis Ihren Bereich. Beginnen Sie mit der Dosierung des Plans, messen Sie morgen, und fragen Sie neu.`,
    between: (from, to) => `${from} bis ${to}`,
    orNever: (from) => `${from} oder mehr`,
    raised: (largest, ph) =>
      `Die Alkalinität bewegt sich dann um höchstens ${largest} dKH am Tag; der pH erreicht höchstens ${ph}.`,
    grams: (grams, additive) => `${grams} g ${additive}`,
    doseNothing: 'dosieren Sie nichts',
    goOn: (percent, what) =>
      `dosieren Sie ${percent} % der Dosis weiter (${what}), denn ohne sie fiele sie schneller als Ihre Grenze am Tag`,
    tooSlow: (now, target, meanwhile) =>
      `Zuerst von ${now} auf ${target} dKH: ${meanwhile}; sie kommt in zwei Monaten nicht dorthin. Wechseln Sie Wasser mit einem Salz, das weniger enthält.`,
    wait: (now, target, days, meanwhile, largest) =>
      `Zuerst von ${now} auf ${target} dKH: Warten Sie etwa ${days} Tage und ${meanwhile}. Sie fällt um höchstens ${largest} dKH am Tag. Dann beginnen Sie.`,
  },
  dosing: {
    volume: (litres) => `${litres} L`,
    noTopOff: 'keine Nachfüllung',
    plainTopOff: 'reines Wasser in der Nachfüllung',
    topOff: (strength, additive) => `${strength} g/L ${additive} in der Nachfüllung`,
    litresADay: (litres) => `, ${litres} L am Tag`,
    doser: (ml, name) => `${ml} mL ${name} am Tag`,
    changes: (percent, days) => `${percent} % neues Wasser alle ${days} Tage`,
  },
  recipe: {
    salts: { low: 'Mischung mit wenig Alkalinität', high: 'Mischung mit viel Alkalinität' },
    scoops: (scoops, grams) => ` (${scoops} gestrichene Löffel zu ${grams} g)`,
    seaSalt: 'trockenes Meersalz',
    powder: (grams, name) => `${grams} ${name}`,
    used: (name, grams) => `${name} ${grams}`,
    and: ' und ',
    mixTopOff: (powder, litres, perLitre) =>
      `Nachfüllung: ${powder} in ${litres} L reines Wasser; danach ${perLitre} g für jeden Liter, den Sie auffüllen, nicht mehr. Absetzen lassen, die klare Flüssigkeit nehmen, den Behälter zugedeckt halten.`,
    doseTopOff: (litres, days) =>
      `Die Nachfüllung ersetzt, was verdunstet, etwa ${litres} L am Tag; ${days === 1 ? 'jeden Tag' : `alle ${days} Tage`} auffüllen.`,
    mixStock: (name, powders, litres) =>
      `Stammlösung „${name}“: ${powders}, mit reinem Wasser auf ${litres} L aufgefüllt.`,
    keepApart: (ml) =>
      `Bewahren Sie sie in einem geschlossenen, beschrifteten Kanister auf: An der Pumpe dürfen höchstens ${ml} mL davon auf einmal stehen.`,
    doseStock: (name, perDay, perHour) => `${name}: ${perDay} mL am Tag (${perHour} mL je Stunde).`,
    doseStockByPump: (name, perDay, perHour, minutes) =>
      `${name}: ${perDay} mL am Tag (${perHour} mL je Stunde), ${minutes} Minuten Ihrer Pumpe.`,
    change: (litres, percent, days, ppt, salt, grams) =>
      `Wasserwechsel: ${litres} L (${percent} %) alle ${days} Tage, auf ${ppt} ppt angesetzt mit ${salt} (etwa ${grams} Salz aus dem Beutel; wiegen, dann messen).`,
  },
};
