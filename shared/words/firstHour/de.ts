import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  first: 'Zuerst',
  rest: 'Der Rest der ersten Stunde',
  then: 'Dann',
  never: 'Nie',
  practice:
    'Gängige Praxis: mit den Sicherheitsdatenblättern und den örtlichen Vorschriften abgleichen. Kranke Tiere: ein fischkundiger Tierarzt.',
  acts: {
    breaker:
      'Wasser auf dem Boden oder an Steckdosen: am Sicherungskasten abschalten, von einem trockenen Platz aus.',
    leaveRoom:
      'Kommt das CO₂ aus einer Flasche oder einem Reaktor: den Raum verlassen, dann lüften, und die Flasche von außerhalb ihrer Reichweite schließen.',
    unplugTopOff: 'Mit trockenen Händen den Stecker der Nachfüllung ziehen.',
    liftHose:
      'Das Schlauchende über das Wasser im Nachfüllbehälter heben: Den Stecker zu ziehen hält einen Heber nicht auf.',
    unplugDoser: 'Mit trockenen Händen den Stecker dieser Dosierpumpe ziehen.',
    unplugHeater: 'Mit trockenen Händen den Stecker des Heizers ziehen.',
    moveWater:
      'Wasser oder Luft bewegen: Batterie-Luftpumpe, oder Wasser schöpfen und zurückgießen. Der Sauerstoff geht zuerst aus.',
    warmSlowly: 'Langsam erwärmen: zweiter Heizer, Becken einwickeln, kein heißes Wasser hinein.',
    stopAdding: 'Nichts mehr hineingeben.',
    startWater: 'Ist der Strom zurück: nachsehen, dass Förderpumpe und Abschäumer wieder laufen.',
    keepWarm: 'Warm halten: das Becken einwickeln, den Deckel bis auf die Luft geschlossen.',
    coolSlowly:
      'Höchstens 1 °C je Stunde abkühlen lassen: Deckel ab, Ventilator übers Wasser; darauf achten, dass die Nachfüllung mitkommt.',
    aerate: 'Belüften: Abschäumer, Luftstein, Ausläufe an die Oberfläche.',
    skimAndSettle: 'Abschäumen und den Kalk absetzen lassen; später absaugen.',
    openWindows: 'Den Raum lüften: Fenster auf.',
    measurePh: 'Den pH-Wert messen, und alle halbe Stunde wieder.',
    measureAlkalinity: 'Die Alkalinität testen.',
    measureSalinity: 'Den Salzgehalt messen.',
    measureTemperature: 'Die Temperatur messen, und alle halbe Stunde wieder.',
    ammoniaTest: 'Wenn Fische nach Luft schnappen, Ammonium testen: Hoher pH-Wert macht es giftig.',
    plainWater: 'Reines Süßwasser für das, was verdunstet, bis die Ursache gefunden ist.',
    fillByHand:
      'Von Hand mit reinem Süßwasser auffüllen, nach und nach: Der Salzgehalt fällt um höchstens 1 am Tag.',
    topOffStays: 'Die Nachfüllung bleibt an, mit reinem Süßwasser, wenn sie dasselbe Mittel trug.',
    topOffStaysOff:
      'Den Stecker der Nachfüllung ziehen; ist der Strom zurück, bleibt sie aus, bis der Wasserstand ist, wo er immer ist.',
    emptyReservoir:
      'Den Nachfüllbehälter leeren und ausspülen; die falsche Mischung kommt nicht in die Nähe des Beckens.',
    changeInSteps:
      'Wasser in kleinen Schritten wechseln, mit nachgemessenem Salzgehalt: Er bewegt sich um weniger als 1 am Tag.',
    twinPump: 'Auch die andere Pumpe eines Paars anhalten.',
    neverInOneGo: 'Versäumtes nie auf einmal nachholen.',
    measurePump: 'Die Pumpe in einen Messzylinder laufen lassen, bevor sie wieder dosiert.',
    noAcid: 'Keine Säure.',
    noStir: 'Nicht rühren, und den Behälter nicht ins Becken ausspülen.',
    noFeeding: 'Nicht füttern.',
    noIce: 'Kein Eis und kein kaltes Wasser ins Becken.',
    noReturn: 'Nicht zum Nachsehen bleiben, und nicht zurückgehen, bevor gelüftet ist.',
    noTank: 'Das Becken nicht anfassen, bevor der Strom aus ist.',
  },
};
