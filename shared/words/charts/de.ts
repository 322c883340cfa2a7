import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Diagramme',
  cursor: 'Zeitzeiger',
  stretch: 'Gezeigter Zeitraum',
  whole: 'Ganzer Versuch',
  week: '7 Tage',
  twoDays: '2 Tage',
  nearer: 'Näher',
  farther: 'Weiter weg',
  enlarge: (title) => `${title} groß zeigen`,
  folded: 'Temperatur, Sauerstoff, Sättigung, Kohlenstoff, CO₂, Volumen, Nachfüllbehälter, Nitrat',
  alkalinity: 'Alkalinität',
  ph: 'pH-Wert',
  calcium: 'Calcium',
  salinity: 'Salzgehalt',
  temperature: 'Temperatur',
  oxygen: 'Sauerstoff',
  oxygenSaturation: 'Sauerstoff gegenüber der Luft',
  omega: 'Sättigung (Ω Aragonit); Wachstumsgesetze bei 2–4 gemessen',
  dic: 'Anorganischer Kohlenstoff (DIC)',
  pco2: 'CO₂ im Wasser',
  volume: 'Volumen',
  reservoir: 'Nachfüllbehälter',
  nitrate: 'Nitrat',
  reads: (title, atCursor, shapes) =>
    `${title} im Lauf der Zeit: ${atCursor} am Zeitzeiger; ${shapes}`,
  shape: (name, from, to, low, high) =>
    `${name} geht von ${from} nach ${to}, zwischen ${low} und ${high}`,
  day: (day) => `Tag ${day}`,
  start: 'Beginn',
  save: 'Speichern',
  asPicture: (title) => ` von ${title} als Bild`,
  notMade: (why) => `Das Bild kam nicht zustande: ${why}. Versuchen Sie die andere Art.`,
  noPicture: 'Der Browser hat kein Bild gezeichnet',
  madeBy:
    'Gerechnet von Paper Reef, eine Simulation, keine Messung. Carbonatkonstanten: Lueker et al. 2000; pH-Wert auf der NBS-Skala (Takahashi et al. 1982).',
  use: (dkhPerDay) => `Verbrauch zu Beginn ${dkhPerDay} dKH/Tag`,
  rate: (mmol, area) => `${mmol} mmol/m²/Tag auf ${area} m²`,
  plan: (name, water, use, ppm, kLa) =>
    `${name}: ${water}; ${use}; CO₂ im Raum ${ppm} ppm, kLa ${kLa} je Stunde.`,
  fanKey: 'Punkte: Ihre Messungen ± σ · Linie: das angepasste Becken · Fläche: 19 von 20 Malen',
  notes: 'Notizen des Monats',
  readNotes:
    'Ein Bleistiftzeichen ist eine Notiz: Drücken Sie es, oder gehen Sie mit den Pfeiltasten durch.',
  noNotes: 'Keine Notizen an diesen Tagen.',
  noted: (day, text) => `${day}: ${text}`,
  fanDays:
    'Punkte: Ihre Messungen ± σ · Linie und Band: das angepasste Becken, tageweise · Fläche: 19 von 20',
  fanMarks: '▲ hineingegeben · ○ Wasser gewechselt',
  fan: (count, from, to, by) =>
    `Alkalinität in dKH: ${count} Messungen, und die Vorhersage von ${from} bis ${to} ± ${by}`,
  dots: (what, unit, count, newest) =>
    `${what}${unit === '' ? '' : ` in ${unit}`}: ${count} Messungen, die neueste ${newest}`,
  tableCsv: 'Diese Tabelle als CSV',
};
