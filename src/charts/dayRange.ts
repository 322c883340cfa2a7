import { extent } from 'd3-array';
import { dayAround } from './dayAround';

/** The lowest and highest of the day around an hour. */
export const dayRange = (values: Float64Array, row: number): [number, number] =>
  extent(values.subarray(...dayAround(row, values.length))) as [number, number];
