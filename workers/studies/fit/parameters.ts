import { LOT_SIGMA_DKH } from '../../../shared/log/lotOffset';
import type { Scenario } from '../../../shared/scenario/schema';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Happened, Observation, Stocking } from './asItHappened';
import type { ByHand } from './byHand';
import type { Leap } from './leap';
import { SUDDEN_DKH } from './restlessness';

/** What is known of a parameter before the log is read. */
export interface Prior {
  readonly mean: number;
  readonly sigma: number;
}

/** A number that the fit is free to choose. */
export interface Parameter {
  /** `lot 1` and `corals 0` are those of the log, counted from 0. */
  readonly id: string;
  readonly unit: string;
  readonly initial: number;
  readonly min: number;
  readonly max: number;
  /** The step of its difference quotients. */
  readonly step: number;
  readonly prior?: Prior;
  /** It may also stand at one value, whatever the prior says: the odds of that before the log is read. */
  readonly mayRest?: { readonly at: number; readonly odds: number };
  /** The scenario with this value; an offset of what is read leaves it alone. */
  readonly apply?: (scenario: Scenario, value: number) => Scenario;
  /** Which change of the corals it is the factor of, counted from 0: use is so many times what it was. */
  readonly stocking?: number;
  /** Which leap of the water it is, counted from 0: so much higher from then on. */
  readonly leap?: number;
  /** For an offset: what it is added to. */
  readonly offsets?: (observation: Observation) => boolean;
}

/** Corals double in 3–12 months, or stand still: ±0.3 %/day about the plan's (common practice). */
const GROWTH_SIGMA = 0.3;
/** Of two tanks one has corals that stand still, so far as a log can tell (common practice). */
const STILL_ODDS = 0.5;
/** A plain description of the aeration is trusted to a factor of two (common practice). */
export const LN_KLA_SIGMA = Math.LN2;
/** Carbon fixed in the light, as the plan has it: ± mmol/L/day (common practice). */
const GROSS_SIGMA = 0.5;
/** How far a hobby probe reads off, all along: common practice. */
const PH_OFFSET_SIGMA = 0.1;
/** Fewer readings of pH say nothing of day and night. */
const LEAST_PH_READINGS = 3;

const use = ({ useDkhPerDay: reckoned }: ByHand): Parameter => ({
  id: 'use',
  unit: 'dKH/day',
  initial: reckoned,
  min: 0,
  max: quantityAt(['corals', 'useDkhPerDay']).quantity.max,
  step: 0.02,
  apply: (scenario, useDkhPerDay) => ({
    ...scenario,
    corals: { ...scenario.corals, useDkhPerDay },
  }),
});

const growth = ({ corals }: Scenario): Parameter => ({
  id: 'growth',
  unit: '%/day',
  initial: corals.growthPercentPerDay,
  min: 0,
  max: quantityAt(['corals', 'growthPercentPerDay']).quantity.max,
  step: 0.1,
  prior: { mean: corals.growthPercentPerDay, sigma: GROWTH_SIGMA },
  mayRest: { at: 0, odds: STILL_ODDS },
  apply: (scenario, growthPercentPerDay) => ({
    ...scenario,
    corals: { ...scenario.corals, growthPercentPerDay },
  }),
});

const start = ({ startDkh }: ByHand): Parameter => ({
  id: 'start',
  unit: 'dKH',
  initial: startDkh,
  ...{ min: 0.5, max: 30, step: 0.05 },
  apply: (scenario, alkalinityDkh) => ({ ...scenario, tank: { ...scenario.tank, alkalinityDkh } }),
});

const lnKLa = ({ gas }: Scenario): Parameter => ({
  id: 'lnKLa',
  unit: '',
  initial: Math.log(Math.max(0.05, gas.kLaPerH)),
  ...{ min: Math.log(0.02), max: Math.log(20), step: 0.03 },
  prior: { mean: Math.log(Math.max(0.05, gas.kLaPerH)), sigma: LN_KLA_SIGMA },
  apply: (scenario, value) => ({ ...scenario, gas: { ...scenario.gas, kLaPerH: Math.exp(value) } }),
});

const gross = ({ photosynthesis }: Scenario): Parameter => ({
  id: 'gross',
  unit: 'mmol/L/day',
  initial: photosynthesis.grossMmolPerLPerDay,
  ...{ min: 0, max: 10, step: 0.03 },
  prior: { mean: photosynthesis.grossMmolPerLPerDay, sigma: GROSS_SIGMA },
  apply: (scenario, grossMmolPerLPerDay) => ({
    ...scenario,
    photosynthesis: { ...scenario.photosynthesis, grossMmolPerLPerDay },
  }),
});

const lotOffset = (lot: number): Parameter => ({
  id: `lot ${lot}`,
  unit: 'dKH',
  initial: 0,
  ...{ min: -3, max: 3, step: 0.05 },
  prior: { mean: 0, sigma: LOT_SIGMA_DKH },
  offsets: (read) => read.kind === 'alkalinity' && read.lot === lot,
});

/** Corals added or taken out are judged by eye: to a third of what was judged, a twentieth of all at least (common practice). */
const STOCKING_SHARE = 1 / 3;
const LEAST_STOCKING = 0.05;

function stocking({ percent }: Stocking, index: number): Parameter {
  const mean = 1 + percent / 100;
  return {
    id: `corals ${index}`,
    unit: '',
    initial: mean,
    ...{ min: 0, max: 10, step: 0.03, stocking: index },
    prior: {
      mean,
      sigma: Math.max(LEAST_STOCKING, (STOCKING_SHARE * Math.abs(percent)) / 100),
    },
  };
}

const leap = ({ byDkh }: Leap, index: number): Parameter => ({
  id: `leap ${index}`,
  unit: 'dKH',
  initial: byDkh,
  ...{ min: -12, max: 12, step: 0.1, leap: index },
  prior: { mean: 0, sigma: SUDDEN_DKH },
});

/** A probe reads the same amount too high or too low all along. */
const phOffset: Parameter = {
  id: 'phOffset',
  unit: 'pH',
  initial: 0,
  ...{ min: -1, max: 1, step: 0.01 },
  prior: { mean: 0, sigma: PH_OFFSET_SIGMA },
  offsets: ({ kind }) => kind === 'ph',
};

/** What the readings of this log can speak to. */
export function parametersOf({
  scenario,
  observations,
  lots,
  stockings,
  leaps,
  guess,
}: Happened): Parameter[] {
  const phReadings = observations.filter(({ kind }) => kind === 'ph').length;
  return [
    ...[use(guess), growth(scenario), start(guess)],
    ...(phReadings >= LEAST_PH_READINGS ? [lnKLa(scenario), gross(scenario), phOffset] : []),
    ...stockings.map(stocking),
    ...leaps.map(leap),
    ...lots.slice(1).map((_, i) => lotOffset(i + 1)),
  ];
}

/** Fitted numbers after a step, inside their bounds. */
export const withinBounds = (
  parameters: readonly Parameter[],
  values: readonly number[],
  by: readonly number[],
): number[] =>
  values.map((value, i) =>
    Math.max(parameters[i]!.min, Math.min(parameters[i]!.max, value + by[i]!)),
  );
