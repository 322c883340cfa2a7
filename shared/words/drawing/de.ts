import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  title: 'Das Becken, gezeichnet',
  larger:
    'Stunde für Stunde aus dem Versuch gezeichnet. Pfeile sind so breit wie das, was sich bewegt; der Wasserstand im Technikbecken liegt zwischen dessen Rand und ebenso weit darunter; Korallen sind weit größer gezeichnet, als sie sind.',
  play: 'Abspielen',
  pause: 'Anhalten',
  back: 'Eine Stunde zurück',
  forth: 'Eine Stunde weiter',
  reservoir: 'Behälter',
  sump: 'Technikbecken',
  bottles: 'Flaschen',
  sentence: (moment, light, alkalinity, ph) => `${moment}, ${light}: ${alkalinity}, pH ${ph}.`,
  lightOn: 'Licht an',
  lightDim: 'Licht gedimmt',
  lightOff: 'Licht aus',
  hour: (took, brought) =>
    `In dieser Stunde wurden ${took} verbraucht, und ${brought} kamen hinein.`,
  nothingMoves: 'In dieser Stunde bewegt sich keine Alkalinität.',
  co2In: (room, water) => `CO₂ geht ins Wasser (Raum ${room}, Wasser ${water} µatm).`,
  co2Out: (room, water) => `CO₂ verlässt das Wasser (Raum ${room}, Wasser ${water} µatm).`,
  co2Rests: 'CO₂ von Luft und Wasser sind im Gleichgewicht.',
  reservoirHolds: (litres, topped) =>
    `Im Nachfüllbehälter stehen ${litres}; ${topped} davon gingen hinein.`,
  empty: 'Der Nachfüllbehälter ist leer.',
  grown: (grams) => `Die Korallen haben ${grams} Skelett gebildet.`,
  runsOver: 'Das Wasser steht am Rand.',
  high: 'Der pH liegt über Ihrer Grenze.',
  harm: 'Der pH liegt über dem, bei dem Sie Schaden erwarten.',
  low: 'Der pH liegt unter Ihrer Grenze.',
  failing: (what) => `Gerade fällt aus: ${what}.`,
};
