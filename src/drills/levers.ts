import { toFigures } from '../../shared/units/digits';
import { say } from '../../shared/words/drills';
import type { FieldPath } from '../../shared/scenario/fields';
import type { Scenario } from '../../shared/scenario/schema';
import type { Lever } from '../ask/outcome';

/** What may be asked backwards, in the keeper's words. */
export const levers: Readonly<
  Record<
    Lever,
    {
      readonly question: string;
      readonly name: string;
      readonly unit: string;
      readonly path: FieldPath;
    }
  >
> = {
  reservoirL: {
    question: say.levers.reservoir.question,
    name: say.levers.reservoir.name,
    unit: 'L',
    path: ['topOff', 'reservoirL'],
  },
  gramsPerL: {
    question: say.levers.mix.question,
    name: say.levers.mix.name,
    unit: 'g/L',
    path: ['topOff', 'gramsPerL'],
  },
  pumpLPerH: {
    question: say.levers.pump.question,
    name: say.levers.pump.name,
    unit: 'L/h',
    path: ['topOff', 'pumpLPerH'],
  },
  runLimitMinPerH: {
    question: say.levers.runLimit.question,
    name: say.levers.runLimit.name,
    unit: 'min',
    path: ['topOff', 'runLimitMinPerH'],
  },
};

/** A smaller reservoir is refilled before it is empty: as often as evaporation asks. */
export function refilledInTime(scenario: Scenario): Scenario {
  const { topOff, evaporation } = scenario;
  if (evaporation.mode !== 'fixed' || evaporation.litresPerDay === 0) return scenario;
  const lasts = Math.floor((topOff.reservoirL * 0.95) / evaporation.litresPerDay);
  const refillEveryDays = Math.max(1, Math.min(topOff.refillEveryDays || Infinity, lasts));
  return { ...scenario, topOff: { ...topOff, refillEveryDays } };
}

/** Three figures, never more than what was found to keep the limits. */
export function roundedDown(value: number): number {
  const unit = 10 ** (Math.floor(Math.log10(value)) - 2);
  return toFigures(Math.floor(value / unit + 1e-9) * unit, 3);
}

/** Highest pH of a full dump for each strength (rows) and reservoir (columns). */
export interface DumpMapResult {
  readonly scenario: Scenario;
  readonly reservoirsL: readonly number[];
  readonly strengthsGPerL: readonly number[];
  readonly ph: readonly (readonly number[])[];
}
