import type { LineQuantity } from '../../shared/verdict/lines';
import type { LineResult } from '../../shared/verdict/lineResult';

/** How the name of a number of each quantity ends. */
const units: Readonly<Record<LineQuantity, string>> = {
  alkalinity: 'Dkh',
  ph: 'PhNbs',
  calcium: 'MgPerL',
  magnesium: 'MgPerL',
  salinity: 'Practical',
  temperature: 'C',
  phChange: 'PhPerH',
  alkalinityChange: 'DkhPerDay',
  oxygen: 'MgPerL',
  ammonia: 'MgPerL',
  omega: 'OmegaAragonite',
  volume: 'L',
};

/** A field of one quantity with its unit in its name: `worstPhNbs`. */
export const named = <T>(name: string, quantity: LineQuantity, value: T): Record<string, T> => ({
  [`${name}${units[quantity]}`]: value,
});

/** How a line fared: hours are those of the trial. */
export const lineJson = ({ id, quantity, trouble, limit, worst, ...rest }: LineResult) => ({
  ...{ line: id, quantity, trouble, passed: rest.firstH !== undefined },
  ...named('limit', quantity, limit),
  ...named('worst', quantity, worst),
  ...{ worstH: rest.worstH, firstH: rest.firstH, outsideH: rest.outsideH, backH: rest.backH },
  already: rest.already,
});
