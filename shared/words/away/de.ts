import type { Words } from '../words';
import type { en } from './en';

const days = (count: number) => (count === 1 ? '1 Tag' : `${count} Tage`);
const inDays = (count: number) => (count === 1 ? 'eines Tages' : `${count} Tagen`);
const every = (count: number) => (count === 1 ? 'jeden Tag' : `alle ${count} Tage`);

export const de: Words<typeof en> = {
  panel: {
    title: 'Verreist',
    why: 'Niemand dosiert, testet, mischt oder wechselt Wasser von Hand; Pumpen, Nachfüllung und Licht laufen weiter wie heute. Am Tag der Abreise bleiben Behälter und Flaschen so voll, wie es nötig sein kann, und nie voller, als auf einmal ohne Schaden hineinlaufen kann.',
    days: 'Verreist für, Tage',
    visits: 'Jemand kommt alle, Tage',
    nobody: '0: niemand kommt',
    ask: 'Auf dem simulierten Becken allein lassen',
    trying: 'Das simulierte Becken wird allein gelassen …',
    failing: 'Was ausfallen kann, fällt eins nach dem anderen aus …',
    trouble: (why) => `Es ließ sich nicht berechnen: ${why}`,
    tryIt: 'Auf der Werkbank probieren',
    full: 'Die Werkbank ist voll: Entfernen Sie dort erst einen Versuch.',
    sheet: 'Der Zettel für die Vertretung, zum Drucken',
    outside: (typed, min, max) =>
      `${typed} erhalten; erwartet werden ganze Tage von ${min} bis ${max}.`,
    caption: 'Was bei der Abreise darin stehen muss',
    vessel: 'Gefäß',
    has: 'Enthält jetzt, L',
    used: 'Verbrauch wie eingestellt, L',
    needed: 'Höchstens nötig, L',
    leave: 'Zurücklassen mit, L',
    most: 'Nicht mehr als, L, und warum',
    anyOfIt: 'was es enthält oder braucht, schadet auf einmal nicht',
    mostHarm: (litres, ph, dkh) => `${litres}: mehr auf einmal ginge über pH ${ph} oder ${dkh} dKH`,
    mostRim: (litres) => `${litres}: mehr auf einmal liefe über den Rand des Technikbeckens`,
    mostOther: (litres, today) =>
      `${litres} hiervon; von der heutigen Mischung ${today}, denn mehr auf einmal würde schaden`,
    doesHarm: (most) => `so viel schadet auf einmal; ${most}`,
    reservoir: 'Nachfüllbehälter',
    reservoirIs: 'der Behälter',
    bottleIs: (name) => `die Flasche von „${name}“`,
    throughout: 'die ganze Zeit',
    lastsDays: (asSet, surely) => `${asSet} Tage, schlimmstenfalls ${surely}`,
    lastsBut: (surely) => `die ganze Zeit wie eingestellt, schlimmstenfalls ${surely} Tage`,
    tooMuch: 'mehr als einstellbar',
    failuresTitle: 'Was schiefgehen kann, während niemand hinsieht',
    failuresWhy:
      'Jedes beginnt zur schlimmsten Stunde der ersten Nacht und dauert, bis jemand kommt. Die Spannen sind die der Becken, die Ihres sein können.',
    kinderTitle: 'Was das schlimmste davon milder machte',
    more: 'Liter, Grenzen und was sonst schiefgehen kann',
  },
  name: (count) => `Verreist für ${days(count)}`,
  provision: {
    leave: (litres) => `lassen Sie ${litres} zurück`,
    reservoirSame: (litres, gramsPerL) =>
      `${litres} der heutigen Mischung (${gramsPerL} g/L) im Behälter`,
    reservoirThinner: (litres, gramsPerL, now) =>
      `${litres} im Behälter, gemischt mit ${gramsPerL} g/L statt ${now}, denn so viel der heutigen Mischung auf einmal würde schaden`,
    reservoirPlain: (litres) => `${litres} reines Süßwasser im Behälter`,
    reservoirNew: (litres) => `eine neue Nachfüllung mit ${litres} reinem Süßwasser im Behälter`,
    noReservoir: 'keine Nachfüllung, wie jetzt',
    empty: 'den Behälter leer',
    bottle: (litres, name) => `${litres} in der Flasche von „${name}“`,
    visits: (count, what) => `${every(count)} füllt, wer kommt, wieder bis dahin auf: ${what}`,
    withPlain: 'den Behälter mit reinem Süßwasser',
    withMix:
      'den Behälter mit der heutigen Mischung, die Sie in beschrifteten Kanistern bereitstellen (Schutzbrille und Handschuhe: sie verätzt die Augen)',
    withStock: (name) =>
      `die Flasche von „${name}“ aus einem Kanister mit diesem Namen (Schutzbrille und Handschuhe)`,
  },
  harms: (vessels) =>
    `Nichts, was reicht, ist harmlos: ${vessels} schadet, wenn alles auf einmal hineinläuft. Lassen Sie jeden Tag jemanden nachsehen, oder bleiben Sie kürzer fort.`,
  harmsReservoir: (litres, most) => `${litres} im Behälter (bis ${most} schaden nicht)`,
  harmsBottle: (litres, name, most) =>
    `${litres} in der Flasche von „${name}“ (bis ${most} schaden nicht)`,
  kept: (count, what, from, to, low, high) =>
    `Es kann ${days(count)} allein bleiben: ${what}. Die Alkalinität geht von ${from} auf ${to} dKH (${low}–${high} bei jedem Verbrauch, der für möglich gehalten wird).`,
  keptBut: (leave, of) =>
    ` In ${leave} von ${of} Becken, die Ihres sein können, verlässt trotzdem etwas Ihre Grenzen.`,
  noTopOff: (litres) =>
    `Es gibt keine Nachfüllung: was verdunstet, bis zu ${litres} am Tag, muss täglich von Hand hinein oder durch eine Nachfüllung, die Sie vor der Abreise einrichten und beobachten.`,
  inside: (watched) =>
    `Bei keinem Verbrauch, der für möglich gehalten wird, verlässt etwas Beobachtetes Ihre Grenzen: ${watched}.`,
  insideBut: (lines) =>
    `Nichts geht weiter hinaus, als es beim heutigen Betrieb ist; so oder so draußen: ${lines}.`,
  leaves: (count, what, day, way) =>
    `Nicht für ${days(count)}: ${what}, zuerst an Tag ${day}. ${way}`,
  onlyVisited: (count, what, day, often) =>
    `Nicht für ${days(count)}, wie gefragt: ${what}, zuerst an Tag ${day}. Es geht, wenn ${every(often)} jemand kommt.`,
  passes: (what, value) => `${what} (bis ${value})`,
  empties: (vessel) => `${vessel} kann leer sein`,
  leavesRange: 'das simulierte Becken verlässt den Bereich seiner Chemie',
  wayOut: {
    fewerDays: (count) =>
      `Es geht für ${days(count)} oder mit jemandem, der bis dahin testet und auffüllt.`,
    withVisits: (count, often, why, day) =>
      `Es geht für ${days(count)}, wenn ${every(often)} jemand kommt; dann ${why}, zuerst an Tag ${day}.`,
    moreOften:
      'Jemand, der testet und auffüllen oder dosieren kann, müsste öfter als einmal am Tag kommen.',
    firstOfAll: 'Bringen Sie das vor der Abreise in Ordnung.',
    best: (what) => `Am besten, solange es geht: ${what}.`,
  },
  handDoses:
    'Was Sie jetzt von Hand zugeben, fehlt, während Sie verreist sind: eine Pumpe müsste es bringen (die Pläne unten).',
  rim: (litres, lasts) =>
    `Höchstens ${litres} dürfen im Behälter stehen; das reicht schlimmstenfalls ${lasts} Tage: liefe alles auf einmal hinein, ginge mehr über den Rand des Technikbeckens auf den Boden.`,
  tooFull: (litres, lasts, ph, dkh) =>
    `Höchstens ${litres} der heutigen Mischung dürfen im Behälter stehen; das reicht schlimmstenfalls ${lasts} Tage: liefe alles auf einmal hinein, ginge mehr über pH ${ph} oder ${dkh} dKH.`,
  bottleTooFull: (name, litres, lasts, ph, dkh) =>
    `In der Flasche von „${name}“ dürfen höchstens ${litres} stehen; das reicht schlimmstenfalls ${lasts} Tage: klemmt ihre Pumpe, ginge mehr auf einmal über pH ${ph}, ${dkh} dKH oder den Rand des Technikbeckens.`,
  fromNow: (level) => `Gerechnet ab den ${level} dKH von jetzt, zur schlimmsten Stunde des Tages.`,
  named: (pump) => `„${pump}“`,
  lasts: (vessel, how) => `Was es jetzt fasst, reicht: ${vessel} ${how}.`,
  margin: (evaporation, pumps) =>
    `Die Liter gelten für ${evaporation} % mehr Verdunstung und ${pumps} % mehr aus jeder Pumpe als eingestellt: zwei Standardfehler dessen, was gewöhnlich abweicht.`,
  assumedUse: (use, by) =>
    `Niemand hat den Verbrauch gemessen: ${use} ± ${by} dKH am Tag ist der des Plans. Zwei Tests im Abstand von einigen Tagen würden ihn zeigen.`,
  assumedLevel: (level) =>
    `Es ist noch keine Alkalinität gemessen: Sie beginnt hier bei den ${level} dKH des Plans. Testen Sie vor der Abreise.`,
  leapt:
    'Zwischen zwei Messungen wurde das Wasser auf einmal von etwas bewegt, das nicht im Messbuch steht und wiederkommen kann: Finden Sie es, bevor Sie fahren.',
  untold:
    'Die Messwerte steigen um mehr, als dosiert wird, sodass niemand weiß, was das Becken verbraucht: Finden Sie heraus, warum, bevor Sie fahren.',
  oldLevel: (day, level) =>
    `Die neueste Messung ist vom ${day}, und der nächste Test ist überfällig: Sie beginnt hier bei den ${level} dKH, die daraus folgen. Testen Sie vor der Abreise.`,
  odds: (count, leave, of) =>
    leave === 0
      ? `In keinem von ${of} Becken, die Ihres sein können, verlässt binnen ${inDays(count)} etwas Ihre Grenzen, das jetzt darin ist.`
      : `In ${leave} von ${of} Becken, die Ihres sein können, verlässt binnen ${inDays(count)} etwas Ihre Grenzen, das jetzt darin ist`,
  oddsOf: (what, leave) => `${what} in ${leave}`,
  oddsFrom:
    'Die Becken, die Ihres sein können, unterscheiden sich wie solche Becken gewöhnlich: in Verbrauch, Verdunstung, Pumpen, Stärke der Mischung, Volumen, Stand, Gasaustausch und Raumluft.',
  notInIt:
    'Nicht darin: Krankheit, Algen oder Schnecken auf einem Sensor, ein Filter, der sich zusetzt, und Füttern, das anders ist als im Plan.',
  worst: (what, hour, told) =>
    `Am schlimmsten, während niemand hinsieht: ${what} um ${hour} in der ersten Nacht. ${told}`,
  harm: (line, after) => `Schaden: ${line} ${after}.`,
  comesAfter: (span) => `Jemand kommt ${span} nach dem Beginn.`,
  comesBefore: (span) => `Jemand kommt ${span} nach dem Beginn, also vorher.`,
  harmless: (what) =>
    `Für sich allein überschreitet keins davon in dieser Zeit eine Grenze: ${what}.`,
  failure: (what, hour) => `${what}, ${hour}`,
  sheet: {
    title: 'Der Zettel für die Vertretung',
    noDays: (typed, max) =>
      `Dieser Zettel ist für Tage ohne Sie, und die Adresse muss sagen, wie viele: ${typed === '' ? 'nichts' : `„${typed}“`} erhalten; erwartet werden ganze Tage von 1 bis ${max}, etwa #sitter/9, oder #sitter/9/3, wenn alle 3 Tage jemand kommt. „Verreist“ im Messbuch schreibt es für Sie.`,
    of: (tank) => `Wer nach ${tank} sieht`,
    dates: (from, to) => `Verreist ab ${from}, zurück am ${to}.`,
    visits: (count) => `Sie kommen ${every(count)}.`,
    nobody: 'Es kommt nur, wer gerufen wird: dann ist dieser Zettel dafür.',
    print: 'Zettel drucken',
    back: 'Zurück zum Messbuch',
    working: 'Das simulierte Becken wird allein gelassen, und was ausfallen kann, fällt aus …',
    people:
      'Menschen zuerst. Nasser Boden: Sicherung aus, von einer trockenen Stelle, vor allem anderen. Trockene Hände an jedem Stecker. Nichts hier ist eine Verletzung wert.',
    look: 'Hinsehen, bei jedem Besuch',
    lookCalled: 'Hinsehen, wenn Sie gerufen werden',
    looks: {
      fish: 'Atmen die Fische ruhig, und sind die Korallen offen wie auf dem Bild, das bereitliegt? Was Sie an den Tieren sehen, geht allem anderen auf diesem Zettel vor.',
      flow: 'Bewegt sich das Wasser an der Oberfläche, und laufen die Pumpen?',
      temperature: (low, high) => `Zeigt das Thermometer ${low} bis ${high} °C?`,
      level:
        'Steht das Wasser im Technikbecken (dem Becken unter dem Aquarium) an der Marke, und ist der Boden trocken?',
      reservoir: (litres) =>
        `Ist der Nachfüllbehälter (der Kanister, der ersetzt, was verdunstet) gefallen, aber um höchstens ${litres} am Tag?`,
      bottles: 'Ist jede Flasche an einer Pumpe ein wenig gefallen, und ist noch etwas darin?',
      feed: 'Nur die bereitliegenden Portionen füttern, eine am Tag; im Zweifel keine.',
    },
    topUp: 'Nachfüllen',
    stands: 'Was dort steht',
    topUps: {
      nothing: 'Nichts zu tun: was dort steht, reicht bis zur Rückkehr.',
      bottleLasts: (name, count) =>
        `Die Flasche von „${name}“ kann nach ${count} Tagen leer sein. Rufen Sie vorher an.`,
      bottle: (name, mark, litres) =>
        `Die Flasche von „${name}“ bis zur Marke (${mark}) aus dem Kanister mit demselben Namen auffüllen, langsam, höchstens ${litres} bei einem Besuch. Schutzbrille und Handschuhe: es reizt Augen und Haut. Nimmt sie mehr auf, anrufen.`,
      lasts: (count) => `Der Behälter kann nach ${count} Tagen leer sein. Rufen Sie vorher an.`,
      byHand: (litres) =>
        `Ist der Behälter leer: das Technikbecken bis zur Marke mit reinem Süßwasser auffüllen (aus dem Kanister „Süßwasser“), langsam, höchstens ${litres} am Tag, und anrufen.`,
      plain: (mark, litres) =>
        `Den Nachfüllbehälter bis zur Marke (${mark}) mit reinem Süßwasser auffüllen (aus dem Kanister „Süßwasser“), nichts hinein, höchstens ${litres} bei einem Besuch. Nimmt er mehr auf, anrufen: etwas ist undicht oder hängt.`,
      mix: (mark, litres) =>
        `Den Nachfüllbehälter bis zur Marke (${mark}) aus dem Kanister „Mischung“ auffüllen, langsam und ohne Rühren, höchstens ${litres} bei einem Besuch. Schutzbrille und Handschuhe: sie verätzt Augen und Haut. Im Auge: 15–20 Minuten mit fließendem Wasser spülen, Lider offen, dann zum Arzt. Nimmt er mehr auf, anrufen.`,
    },
    never: 'Niemals',
    nevers:
      'Niemals Pulver mischen oder hineingeben. Niemals Salzwasser oder Leitungswasser hineingießen. Niemals den Behälter aufrühren. Niemals auf einmal nachholen, was gefehlt hat. Niemals eine Pumpe höher oder niedriger stellen. Niemals ins Wasser greifen, wenn eine Lampe oder ein Kabel darüber ist. Keine Säure.',
    failures: 'Was Sie sehen, und der eine Handgriff',
    pace: (name, ml) => `„${name}“: ${ml} mL`,
    sights: {
      floor: {
        sees: () => 'Wasser auf dem Boden oder nahe einer Steckdose',
        act: () => 'Nichts Nasses anfassen. Sicherung aus, von einer trockenen Stelle.',
      },
      gas: {
        sees: () => 'Die Gasflasche zischt, oder Ihnen wird schwindlig oder die Luft knapp',
        act: () => 'Den Raum verlassen, die Tür weit öffnen, nicht zum Nachsehen zurückgehen.',
      },
      dark: {
        sees: () => 'Lampen und Pumpen sind aus: Stromausfall',
        act: () =>
          'Luft ins Wasser: die Batteriepumpe, oder Wasser schöpfen und zurückgießen. Jede Pumpe, die aus einem Kanister oder einer Flasche etwas hineinbringt, mit trockenen Händen ausstecken. Nicht füttern.',
      },
      still: {
        sees: () =>
          'Die Oberfläche steht still, obwohl die Lampen brennen, oder Fische schnappen oben nach Luft',
        act: () =>
          'Die Batteriepumpe ins Wasser. Mit trockenen Händen nachsehen, ob ein Stecker heraus ist.',
      },
      hot: {
        sees: (high) => `Das Thermometer steht über ${high} °C`,
        act: () =>
          'Den Heizer mit trockenen Händen ausstecken. Deckel ab. Kein Eis, kein kaltes Wasser.',
      },
      cold: {
        sees: (low) => `Das Thermometer steht unter ${low} °C`,
        act: () =>
          'Mit trockenen Händen nachsehen, ob der Stecker des Heizers heraus ist. Eine Decke um das Becken. Kein heißes Wasser.',
      },
      fallsFast: {
        sees: (litres) =>
          `Der Nachfüllbehälter fiel um mehr als ${litres} an einem Tag, oder das Technikbecken steht über der Marke`,
        act: () =>
          'Seine Pumpe mit trockenen Händen ausstecken und das Ende des Schlauchs aus dem Wasser heben. Nichts nachfüllen.',
      },
      standsStill: {
        sees: () =>
          'Der Nachfüllbehälter ist seit gestern nicht gefallen, und das Technikbecken steht unter der Marke',
        act: (litres) =>
          `Süßwasser aus dem Kanister „Süßwasser“ ins Technikbecken bis zur Marke, langsam, höchstens ${litres} am Tag.`,
      },
      bottleEmpty: {
        sees: (paces) =>
          `Eine Flasche fiel an einem Tag um mehr, als sie soll (höchstens ${paces})`,
        act: () => 'Die Pumpe daran mit trockenen Händen ausstecken. Nichts nachfüllen.',
      },
      bottleFull: {
        sees: () => 'Eine Flasche ist seit zwei Tagen nicht gefallen',
        act: () => 'Nichts anfassen. Niemals hineingießen, was gefehlt hat.',
      },
      cloudy: {
        sees: () => 'Das Wasser ist weiß oder trüb',
        act: () =>
          'Jede Pumpe, die aus einem Kanister oder einer Flasche etwas hineinbringt, mit trockenen Händen ausstecken. Nichts aufrühren.',
      },
    },
    calls: {
      nowHarm: (span) => `Dann sofort anrufen: Schaden kann schon ${span} nach dem Beginn kommen.`,
      todayHarm: (span) =>
        `Dann am selben Tag anrufen: Schaden kann schon ${span} nach dem Beginn kommen.`,
      now: 'Dann sofort anrufen.',
      today: 'Dann am selben Tag anrufen.',
      tell: 'Dann Bescheid geben; das hat Zeit bis zum Abend.',
    },
    unseen:
      'Vieles, was schiefgehen kann, sieht man nicht, und es braucht einen Test. Wenn also offene Korallen einen Tag lang geschlossen oder schleimig aussehen oder ein Fisch liegt oder schnappt: sonst nichts anfassen und anrufen.',
    keeper: 'Anrufen, wem das Becken gehört:',
    others: 'Tierarzt · Giftnotruf · Elektriker:',
    places: 'Sicherung, Batteriepumpe und Süßwasser sind:',
    note: 'Die Zeiten sind von einem simulierten Becken, so wie es zurückgelassen wurde, jeder Ausfall zur schlimmsten Stunde der ersten Nacht, ohne dass jemand etwas tut; eine Schätzung. Gängige Praxis: mit den Sicherheitsdatenblättern und den örtlichen Regeln abgleichen.',
    unkept: (day, why) =>
      `Für Sie vor der Abreise: ab dem ${day} nicht gehalten: ${why}. Siehe die Seite „Messbuch“.`,
    unkeptThen: (day, why) => `Dann, ab dem ${day}: ${why}.`,
    unkeptCall: (day) => `Ab dem ${day} täglich anrufen, was immer Sie sehen.`,
  },
};
