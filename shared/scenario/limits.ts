import { part, quantity } from './quantity';

/** Usual bands: common practice, no source. The keeper changes every one. */
const band = (title: string, unit: string, min: number, max: number, step: number) => ({
  low: (usual: number) => quantity({ title: `${title}, low`, unit, min, max, step }, usual),
  high: (usual: number) => quantity({ title: `${title}, high`, unit, min, max, step }, usual),
});

const alkalinity = band('Alkalinity', 'dKH', 0.5, 30, 0.1);
const ph = band('pH', 'pH', 6.5, 10, 0.05);
const calcium = band('Calcium', 'mg/L', 50, 1000, 5);
const magnesium = band('Magnesium', 'mg/L', 100, 3000, 10);
const salinity = band('Salinity', 'ppt', 5, 45, 0.1);

export const limits = part('Your limits', 'The band you want to stay inside (common practice).', {
  alkalinityLowDkh: alkalinity.low(8),
  alkalinityHighDkh: alkalinity.high(12),
  alkalinityChangeDkhPerDay: quantity(
    { title: 'Alkalinity change in a day', unit: 'dKH', min: 0.05, max: 10, step: 0.05 },
    1,
  ),
  phLowNbs: ph.low(7.8),
  phHighNbs: ph.high(8.6),
  calciumLowMgPerL: calcium.low(400),
  calciumHighMgPerL: calcium.high(450),
  magnesiumLowMgPerL: magnesium.low(1250),
  magnesiumHighMgPerL: magnesium.high(1400),
  salinityLowPractical: salinity.low(34),
  salinityHighPractical: salinity.high(36),
});
