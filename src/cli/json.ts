import { toFigures } from '../../shared/units/digits';

/** More than the engine's tolerance carries. */
const DIGITS = 8;

const shown = (_: string, value: unknown): unknown => {
  if (typeof value === 'number') {
    return Number.isFinite(value) ? toFigures(value, DIGITS) : null;
  }
  return ArrayBuffer.isView(value) ? [...(value as Float64Array)] : value;
};

/** JSON for other programs: undefined and what is no number are null, so that no field goes missing. */
export const jsonText = (value: object): string =>
  JSON.stringify(value, (key, part: unknown) => shown(key, part === undefined ? null : part), 1);
