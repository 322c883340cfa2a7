import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  name: 'Paper Reef',
  motto: 'Die Dosis erst auf dem Papier proben, dann im Wasser.',
  pagesLabel: 'Seiten',
  pages: {
    bench: 'Werkbank',
    log: 'Messbuch',
    drills: 'Störfälle',
    lessons: 'Lektionen',
    words: 'Begriffe',
    display: 'Anzeige',
    tanks: 'Alle Becken',
    wall: 'Wenn etwas ausfällt',
    sitter: 'Der Zettel für die Vertretung',
    plan: 'Ein Plan für Sie',
  },
  opening: 'Wird geöffnet …',
  notFetched:
    'Diese Seite, oder ein Teil davon, konnte nicht geladen werden. Laden Sie neu, um es noch einmal zu versuchen.',
  wordsHere: 'Begriffe, die hier vorkommen:',
  newer: {
    here: 'Ein neueres Paper Reef ist da. Dieses läuft weiter, bis Sie wechseln.',
    takenOver:
      'Ein anderes Fenster ist zu einem neueren Paper Reef gewechselt. Laden Sie dieses neu, wann es Ihnen passt.',
    use: 'Das neuere benutzen',
    reload: 'Neu laden',
    later: 'Später',
  },
  display: {
    title: 'Wie alles angezeigt wird',
    keptHere: 'Bleibt nur in diesem Browser. Pläne und Dateien ändern sich dadurch nicht.',
    language: 'Sprache · Language',
    asTheBrowser: 'wie der Browser',
    paper: 'Papier',
    asTheSystem: 'wie das System',
    light: 'hell',
    dark: 'dunkel',
    alkalinity: 'Alkalinität',
    volume: 'Volumen',
    temperature: 'Temperatur',
    salinity: 'Salzgehalt',
    specificGravity: 'spezifisches Gewicht (25/25)',
    decimals: 'Dezimalzeichen',
    point: 'Punkt: 8.5',
    comma: 'Komma: 8,5',
    anyUnit:
      'Eintippen können Sie weiterhin jede Einheit, mit Komma oder Punkt. Dateien und die als CSV gespeicherten stündlichen Zahlen bleiben bei dKH, Litern und °C.',
  },
};
