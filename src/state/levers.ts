import type { FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import type { Lever } from '../client/outcome';

/** What may be asked backwards, in the keeper's words. */
export const levers: Readonly<
  Record<Lever, { readonly question: string; readonly unit: string; readonly path: FieldPath }>
> = {
  reservoirL: {
    question: 'How big may the reservoir be?',
    unit: 'L',
    path: ['topOff', 'reservoirL'],
  },
  gramsPerL: {
    question: 'How strong may the mix be?',
    unit: 'g/L',
    path: ['topOff', 'gramsPerL'],
  },
  pumpLPerH: {
    question: 'How fast may the pump be?',
    unit: 'L/h',
    path: ['topOff', 'pumpLPerH'],
  },
  runLimitMinPerH: {
    question: 'How long may it run in an hour?',
    unit: 'min',
    path: ['topOff', 'runLimitMinPerH'],
  },
};

/** Three figures, never more than what was found to keep the limits. */
export function roundedDown(value: number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) - 2);
  return Number((Math.floor(value / unit + 1e-9) * unit).toPrecision(3));
}

/** Highest pH of a full dump for each strength (rows) and reservoir (columns). */
export interface DumpMapResult {
  readonly scenario: Scenario;
  readonly reservoirsL: readonly number[];
  readonly strengthsGPerL: readonly number[];
  readonly ph: readonly (readonly number[])[];
}
