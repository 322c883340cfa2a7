import { say } from '../words/limits';
import { part, quantity, type FieldText } from './quantity';

/** Usual bands: common practice, no source. The keeper changes every one. */
const edge = (unit: string, min: number, max: number, step: number) => {
  return (text: FieldText, usual: number) => quantity({ ...text, unit, min, max, step }, usual);
};

const alkalinity = edge('dKH', 0.5, 30, 0.1);
const ph = edge('pH', 6.5, 10, 0.05);
const calcium = edge('mg/L', 50, 1000, 5);
const magnesium = edge('mg/L', 100, 3000, 10);
const salinity = edge('ppt', 5, 45, 0.1);
const oxygen = edge('mg/L', 0.1, 10, 0.1);
const temperature = edge('°C', 10, 38, 0.1);

export const limits = part(say.limits, {
  alkalinityLowDkh: alkalinity(say.limits.alkalinityLowDkh, 7),
  alkalinityHighDkh: alkalinity(say.limits.alkalinityHighDkh, 11),
  alkalinityHarmDkh: alkalinity(say.limits.alkalinityHarmDkh, 6),
  alkalinityChangeDkhPerDay: quantity(
    { ...say.limits.alkalinityChangeDkhPerDay, unit: 'dKH', min: 0.05, max: 10, step: 0.05 },
    1,
  ),
  phLowNbs: ph(say.limits.phLowNbs, 7.8),
  phHighNbs: ph(say.limits.phHighNbs, 8.6),
  phHarmNbs: quantity(
    { ...say.limits.phHarmNbs, unit: 'pH', min: 8, max: 10, slider: [8.5, 9.5], step: 0.05 },
    9,
  ),
  phChangePerH: quantity(
    { ...say.limits.phChangePerH, unit: 'pH', min: 0.01, max: 3, slider: [0.05, 1], step: 0.05 },
    0.3,
  ),
  oxygenLowMgPerL: oxygen(say.limits.oxygenLowMgPerL, 4),
  oxygenHarmMgPerL: oxygen(say.limits.oxygenHarmMgPerL, 2.8),
  unionisedAmmoniaMgPerL: quantity(
    {
      ...say.limits.unionisedAmmoniaMgPerL,
      unit: 'mg/L',
      min: 0.001,
      max: 5,
      slider: [0.01, 0.2],
      step: 0.005,
    },
    0.035,
  ),
  omegaHigh: quantity(
    { ...say.limits.omegaHigh, unit: '', min: 2, max: 60, slider: [5, 20], step: 0.5 },
    10,
  ),
  calciumLowMgPerL: calcium(say.limits.calciumLowMgPerL, 400),
  calciumHighMgPerL: calcium(say.limits.calciumHighMgPerL, 450),
  magnesiumLowMgPerL: magnesium(say.limits.magnesiumLowMgPerL, 1250),
  magnesiumHighMgPerL: magnesium(say.limits.magnesiumHighMgPerL, 1400),
  salinityLowPractical: salinity(say.limits.salinityLowPractical, 34),
  salinityHighPractical: salinity(say.limits.salinityHighPractical, 36),
  tempLowC: temperature(say.limits.tempLowC, 24),
  tempHighC: temperature(say.limits.tempHighC, 27),
  tempHarmC: temperature(say.limits.tempHarmC, 30),
});
