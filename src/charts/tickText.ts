import { tickStep } from 'd3-array';
import { decimalsOf } from '../../shared/units/format';
import { fixed } from '../../shared/units/digits';
import type { Scales } from './chartScales';

/** Writes the marks of about so many rules, with the decimals that their step calls for, and a point. */
export function tickText(y: Scales['y'], count: number): (value: number) => string {
  const [low = 0, high = 0] = y.domain();
  const decimals = decimalsOf(tickStep(low, high, count));
  return (value) => fixed(value, decimals).replace('-', '−');
}
