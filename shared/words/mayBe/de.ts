import type { Words } from '../words';
import type { en } from './en';

export const de: Words<typeof en> = {
  between: (low, high, day) => `9 von 10 solchen Becken: ${low}–${high}, Tag ${day}`,
  leave: (percent, low, high) => `etwa ${percent} % verlassen ${low}–${high}`,
  why: 'Die blasse Fläche: wo neun von zehn Becken sind, die nach diesem Plan laufen, mit einem auf ein Fünftel richtigen Verbrauch, dem Nettovolumen auf ein Fünftel, der Verdunstung auf zwei Fünftel, den Pumpen auf ein Fünftel, dem Kalkwasser auf drei Zehntel, dem Gasaustausch auf einen Faktor vier (übliche Praxis, zwei Standardabweichungen), jedes für sich nach beiden Seiten durch das Rechenwerk, und in Quadraten addiert. Messungen im Messbuch machen es dort enger.',
};
