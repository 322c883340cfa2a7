import type { Words } from '../words';
import type { en } from './en';

const days = (count: number) => (count === 1 ? '1 Tag' : `${count} Tage`);
const every = (count: number) => (count === 1 ? 'jeden Tag' : `alle ${count} Tage`);

export const de: Words<typeof en> = {
  panel: {
    title: 'Verreist',
    why: 'Niemand dosiert, testet, mischt oder wechselt Wasser von Hand; Pumpen, Nachfüllung und Licht laufen weiter wie heute. Behälter und Flaschen werden am Tag der Abreise gefüllt.',
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
    has: 'Fasst, L',
    leave: 'Zurücklassen mit, L',
    used: 'Verbrauch wie eingestellt, L',
    fill: 'Für alle Tage, L',
    lasts: 'Was es jetzt fasst, reicht',
    reservoir: 'Nachfüllbehälter',
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
    asIs: 'Behälter und Flaschen bleiben, wie sie sind, voll',
    fills: (litres) => `füllen Sie ${litres}`,
    reservoirSame: (litres, gramsPerL) =>
      `${litres} L der heutigen Mischung (${gramsPerL} g/L) in den Behälter`,
    reservoirThinner: (litres, gramsPerL, now) =>
      `${litres} L in den Behälter, gemischt mit ${gramsPerL} g/L statt ${now}, denn so viel der heutigen Mischung auf einmal würde schaden`,
    reservoirPlain: (litres) => `${litres} L reines Süßwasser in den Behälter`,
    reservoirNew: (litres) =>
      `richten Sie eine Nachfüllung mit ${litres} L reinem Süßwasser im Behälter ein`,
    bottle: (litres, name) => `${litres} L in die Flasche von „${name}“`,
    toppedUp: (count) => `${every(count)} füllt, wer kommt, den Behälter mit reinem Süßwasser auf`,
    mixed: (count) =>
      `${every(count)} füllt, wer kommt, den Behälter mit der heutigen Mischung auf, die Sie in beschrifteten Kanistern bereitstellen (Schutzbrille und Handschuhe: sie verätzt die Augen)`,
  },
  kept: (count, what, from, to, low, high) =>
    `Es kann ${days(count)} allein bleiben: ${what}. Die Alkalinität geht von ${from} auf ${to} dKH (${low}–${high} bei jedem Verbrauch, der für möglich gehalten wird).`,
  keptBut: (leave, of) =>
    ` In ${leave} von ${of} Becken, die Ihres sein können, verlässt trotzdem etwas Ihre Grenzen.`,
  noTopOff: (litres) =>
    `Es gibt keine Nachfüllung: was verdunstet, bis zu ${litres} L am Tag, muss täglich von Hand hinein oder durch eine Nachfüllung, die Sie vor der Abreise einrichten und beobachten.`,
  inside: (watched) =>
    `Bei keinem Verbrauch, der für möglich gehalten wird, verlässt etwas Beobachtetes Ihre Grenzen: ${watched}.`,
  insideBut: (lines) =>
    `Nichts geht weiter hinaus, als es beim heutigen Betrieb ist; so oder so draußen: ${lines}.`,
  leaves: (count, what, day, way) =>
    `Nicht für ${days(count)}: ${what}, zuerst an Tag ${day}. ${way}`,
  onlyVisited: (count, what, day, often) =>
    `Nicht für ${days(count)}, wie gefragt: ${what}, zuerst an Tag ${day}. Es geht, wenn ${every(often)} jemand kommt.`,
  passes: (what, value) => `${what} (bis ${value})`,
  leavesRange: 'das simulierte Becken verlässt den Bereich seiner Chemie',
  wayOut: {
    fewerDays: (count) => `Es geht für ${days(count)} oder mit jemandem, der bis dahin testet.`,
    withVisits: (count, often) => `Es geht für ${days(count)}, wenn ${every(often)} jemand kommt.`,
    firstOfAll: 'Bringen Sie das vor der Abreise in Ordnung.',
    best: (what) => `Am besten, solange es geht: ${what}.`,
  },
  handDoses:
    'Was Sie jetzt von Hand zugeben, fehlt, während Sie verreist sind: eine Pumpe müsste es bringen (die Pläne unten).',
  rim: (litres) =>
    `Höchstens ${litres} L dürfen im Behälter stehen: liefe alles auf einmal hinein, ginge mehr über den Rand des Technikbeckens auf den Boden.`,
  tooFull: (litres) =>
    `Höchstens ${litres} L der heutigen Mischung dürfen im Behälter stehen: liefe alles auf einmal hinein, ginge mehr über den pH, der schadet, oder über Ihre höchste Alkalinität.`,
  named: (pump) => `„${pump}“`,
  lasts: (vessel, how) => `Was es jetzt fasst, reicht: ${vessel} ${how}.`,
  margin: (evaporation, pumps) =>
    `Die Liter gelten für ${evaporation} % mehr Verdunstung und ${pumps} % mehr aus jeder Pumpe als eingestellt: zwei Standardfehler dessen, was gewöhnlich abweicht.`,
  assumedUse: (use, by) =>
    `Niemand hat den Verbrauch gemessen: ${use} ± ${by} dKH am Tag ist der des Plans. Zwei Tests im Abstand von einigen Tagen würden ihn zeigen.`,
  assumedLevel: (level) =>
    `Es ist noch keine Alkalinität gemessen: Sie beginnt hier bei den ${level} dKH des Plans. Testen Sie vor der Abreise.`,
  odds: (leave, of) =>
    leave === 0
      ? `In keinem von ${of} Becken, die Ihres sein können, verlässt etwas Ihre Grenzen, das jetzt darin ist.`
      : `In ${leave} von ${of} Becken, die Ihres sein können, verlässt etwas Ihre Grenzen, das jetzt darin ist`,
  oddsOf: (what, leave) => `${what} in ${leave}`,
  oddsFrom:
    'Die Becken, die Ihres sein können, unterscheiden sich wie solche Becken gewöhnlich: in Verbrauch, Verdunstung, Pumpen, Stärke der Mischung, Volumen, Stand, Gasaustausch und Raumluft.',
  notInIt:
    'Nicht darin: Krankheit, Algen oder Schnecken auf einem Sensor, ein Filter, der sich zusetzt, und Füttern, das anders ist als im Plan.',
  worst: (what, hour, told) =>
    `Am schlimmsten, während niemand hinsieht: ${what} um ${hour} in der ersten Nacht. ${told}`,
  harm: (line, after) => `Schaden: ${line} nach ${after}.`,
  comesAfter: (span) => `Jemand kommt ${span} nach dem Beginn.`,
  comesBefore: (span) => `Jemand kommt ${span} nach dem Beginn, also vorher.`,
  harmless: (what) =>
    `Für sich allein überschreitet keins davon in dieser Zeit eine Grenze: ${what}.`,
  failure: (what, hour) => `${what}, ${hour}`,
  sheet: {
    title: 'Der Zettel für die Vertretung',
    of: (tank) => `Wer nach ${tank} sieht`,
    dates: (from, to) => `Verreist ab ${from}, zurück am ${to}.`,
    visits: (count) => `Sie kommen ${every(count)}.`,
    print: 'Zettel drucken',
    back: 'Zurück zum Messbuch',
    working: 'Das simulierte Becken wird allein gelassen, und was ausfallen kann, fällt aus …',
    people:
      'Menschen zuerst. Nasser Boden: Sicherung aus, von einer trockenen Stelle, vor allem anderen. Trockene Hände an jedem Stecker. Nichts hier ist eine Verletzung wert.',
    look: 'Hinsehen, bei jedem Besuch',
    looks: {
      fish: 'Atmen die Fische ruhig, und sind die Korallen offen wie auf dem Bild, das bereitliegt? Was Sie an den Tieren sehen, geht allem anderen auf diesem Zettel vor.',
      flow: 'Bewegt sich das Wasser an der Oberfläche, und laufen Rückförderpumpe und Abschäumer?',
      temperature: (low, high) =>
        `Zeigt das Thermometer ${low} bis ${high} °C? Wenn nicht, siehe „Heizer“ unten.`,
      level: 'Steht das Wasser im Technikbecken an der Marke, und ist der Boden trocken?',
      reservoir: 'Ist Wasser im Nachfüllbehälter?',
      bottles: 'Ist in jeder Flasche noch etwas? Nur hinsehen.',
      feed: 'Nur die bereitliegenden Portionen füttern, eine am Tag; im Zweifel keine.',
    },
    topUp: 'Nachfüllen',
    topUps: {
      nothing: 'Nichts: was dort steht, reicht bis zur Rückkehr.',
      lasts: (count) =>
        `Was dort steht, kann nach ${count} Tagen verbraucht sein. Rufen Sie vorher an.`,
      byHand: (litres) =>
        `Ist der Behälter leer: das Technikbecken bis zur Marke mit reinem Süßwasser auffüllen (aus dem Kanister „Süßwasser“), langsam, höchstens ${litres} L am Tag, und anrufen.`,
      plain: (litres) =>
        `Den Nachfüllbehälter bis zur Marke mit reinem Süßwasser auffüllen (aus dem Kanister „Süßwasser“), nichts hinein, höchstens ${litres} L bei einem Besuch. Nimmt er mehr auf, anrufen: etwas ist undicht oder hängt.`,
      mix: (litres) =>
        `Den Nachfüllbehälter bis zur Marke aus dem Kanister „Mischung“ auffüllen, langsam und ohne Rühren, höchstens ${litres} L bei einem Besuch. Schutzbrille und Handschuhe: sie verätzt Augen und Haut. Im Auge: 15–20 Minuten mit fließendem Wasser spülen, Lider offen, dann zum Arzt. Nimmt er mehr auf, anrufen.`,
    },
    never: 'Niemals',
    nevers:
      'Niemals Pulver mischen oder hineingeben. Niemals Salzwasser oder Leitungswasser hineingießen. Niemals den Behälter aufrühren. Niemals auf einmal nachholen, was gefehlt hat. Niemals eine Pumpe höher oder niedriger stellen. Niemals ins Wasser greifen, wenn eine Lampe oder ein Kabel darüber ist. Keine Säure.',
    failures: 'Wenn etwas ausgefallen ist: der erste Handgriff, dann anrufen',
    keeper: 'Anrufen, wem das Becken gehört:',
    others: 'Tierarzt · Giftnotruf · Elektriker:',
    places: 'Sicherung, Batteriepumpe und Süßwasser sind:',
    note: 'Die Zeiten sind von einem simulierten Becken, so wie es zurückgelassen wurde, jeder Ausfall zur schlimmsten Stunde der ersten Nacht, ohne dass jemand etwas tut, vom schlimmsten bis zum besten, was dieses Becken sein kann; eine Schätzung. Gängige Praxis: mit den Sicherheitsdatenblättern und den örtlichen Regeln abgleichen.',
    unkept:
      'Für Sie vor der Abreise: das simulierte Becken hält seine Grenzen nicht so lange; siehe die Seite „Messbuch“.',
  },
};
