import { fixed, toFigures } from '../../shared/units/digits';
import { say } from '../../shared/words/quantities';
import type { LineQuantity } from '../../shared/verdict/lines';
import { phText } from './texts';

interface LineText {
  /** The quantity, as it begins a sentence. */
  readonly name: string;
  readonly unit: string;
  readonly format: (value: number) => string;
}

const digits = (count: number) => (value: number) => fixed(value, count);

/** How the quantities of a drill's lines are written. */
export const lineTexts: Readonly<Record<LineQuantity, LineText>> = {
  alkalinity: { name: say.limits.alkalinity, unit: 'dKH', format: digits(1) },
  ph: { name: say.limits.ph, unit: '', format: phText },
  calcium: { name: say.limits.calcium, unit: 'mg/L', format: digits(0) },
  magnesium: { name: say.limits.magnesium, unit: 'mg/L', format: digits(0) },
  salinity: { name: say.limits.salinity, unit: 'ppt', format: digits(1) },
  temperature: { name: say.limits.temperature, unit: '°C', format: digits(1) },
  phChange: { name: say.lines.phChange, unit: '', format: digits(2) },
  alkalinityChange: { name: say.lines.alkalinityChange, unit: 'dKH', format: digits(1) },
  oxygen: { name: say.lines.oxygen, unit: 'mg/L', format: digits(1) },
  ammonia: { name: say.lines.ammonia, unit: 'mg/L', format: digits(3) },
  omega: { name: say.lines.omega, unit: '', format: digits(1) },
  volume: { name: say.lines.volume, unit: 'L', format: digits(0) },
};

/** A limit as the keeper typed it: "8.6", "34 ppt". */
export const limitText = (quantity: LineQuantity, limit: number): string =>
  `${toFigures(limit, 4)} ${lineTexts[quantity].unit}`.trim();

/** "8.62", "34.0 ppt". */
export const lineValue = (quantity: LineQuantity, value: number): string =>
  `${lineTexts[quantity].format(value)} ${lineTexts[quantity].unit}`.trim();
