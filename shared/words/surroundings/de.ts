import type { Words } from '../words';
import type { en } from './en';

const seasonal = 'Ein Faktor über die Zeit, etwa 1 + 0.2 * cos(2 * pi * day / 365).';

export const de: Words<typeof en> = {
  room: {
    title: 'Raumluft',
    help: 'Die Luft, mit der das Wasser im Austausch steht.',
    co2Ppm: {
      title: 'CO₂ im Raum',
      help: 'Fenster offen etwa 450, üblich 700, geschlossen 1200 (gängige Praxis).',
      measure: 'Mit einem CO₂-Messgerät in Höhe des Beckens, morgens und abends.',
    },
    co2Factor: { title: 'CO₂ im Raum im Lauf der Jahreszeiten', help: seasonal },
    co2PpmByHour: {
      title: 'CO₂ im Raum nach Tagesstunde',
      help: '24 Zahlen ab Mitternacht; leer bedeutet den ganzen Tag gleich.',
    },
  },
  gas: {
    title: 'Gasaustausch',
    help: 'Wie schnell CO₂ ins Gleichgewicht mit dem Raum kommt.',
    kLaPerH: {
      title: 'kLa von CO₂',
      help: 'Niemand kennt seinen Wert: Lassen Sie ihn unten aus dem pH-Wert bei Tag und bei Nacht berechnen.',
    },
    enhancement: {
      title: 'Chemische Beschleunigung',
      help: 'CO₂, das schon im Oberflächenfilm reagiert, tritt schneller über; das zählt bei stiller Oberfläche.',
    },
    aeration: {
      title: 'Belüftung',
      help: 'In einfachen Worten: stille Oberfläche; bewegte Oberfläche; Überlauf und Abschäumer; Abschäumer mit Außenluft.',
    },
    outsideAirPercent: {
      title: 'Anteil der Außenluft',
      help: 'Zählt, wenn der Abschäumer Außenluft zieht: So viel von dem, was das Wasser atmet, ist Außenluft mit etwa 425 ppm, der Rest Raumluft (eine Schätzung).',
    },
    lightsOnPhNbs: { title: 'pH-Wert kurz vor Licht an' },
    lightsOffPhNbs: { title: 'pH-Wert kurz vor Licht aus' },
  },
  lights: {
    title: 'Licht',
    help: 'Jeden Tag zu denselben Zeiten an und aus.',
    onHour: { title: 'Licht an um' },
    hours: { title: 'Stunden Licht' },
    rampHours: {
      title: 'Dämmerung, je',
      help: 'Innerhalb der Lichtstunden; die Lichtmenge des Tages bleibt in der Summe gleich.',
    },
  },
  evaporation: {
    title: 'Verdunstung',
    help: 'Süßwasser, das entweicht; das Salz bleibt.',
    mode: {
      title: 'Bekannt',
      help: 'wie gemessen: Liter am Tag, die Sie gemessen haben; aus der Raumluft: aus Oberfläche, Temperaturen und Feuchte (Shah 2014).',
    },
    surfaceM2: { title: 'Wasseroberfläche' },
    airTempC: { title: 'Raumtemperatur' },
    humidityPercent: { title: 'Relative Luftfeuchte' },
    factor: { title: 'Verdunstung im Lauf der Jahreszeiten', help: seasonal },
    litresPerDay: {
      title: 'Verdunstung',
      measure:
        'Markieren Sie den Stand im Nachfüllbehälter, lesen Sie nach drei Tagen ab, wie viel fehlt, und teilen Sie durch drei.',
    },
  },
  temperaturePlan: {
    title: 'Temperaturplan',
    point: {
      title: 'Punkt',
      day: { title: 'Tag' },
      tempC: { title: 'Temperatur' },
    },
    help: 'Punkte, durch Geraden verbunden, von der Anfangstemperatur an; leer: gleichbleibend.',
  },
};
