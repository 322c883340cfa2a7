import { toFigures } from '../units/digits';

/** As fine as a pump is set and a scale is read: three figures, a hundredth of the dose at the most. */
export const threeFigures = (value: number): number => toFigures(value, 3);
