import type { Scenario } from '../../../shared/scenario/schema';
import { quantityAt } from '../../../shared/scenario/fields';
import { say } from '../../../shared/words/fit';
import type { Happened } from './asItHappened';

/** What is known of a parameter before the log is read. */
export interface Prior {
  readonly mean: number;
  readonly sigma: number;
}

/** A number that the fit is free to choose. */
export interface Parameter {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly initial: number;
  readonly min: number;
  readonly max: number;
  /** The step of its difference quotients. */
  readonly step: number;
  readonly prior?: Prior;
  /** The scenario with this value; an offset of a reagent lot leaves it alone. */
  readonly apply: (scenario: Scenario, value: number) => Scenario;
  /** For the offset of a reagent lot: which one. */
  readonly lot?: number;
}

/** Corals double in 3–12 months, or stand still: ±0.3 %/day about the plan's (common practice). */
const GROWTH_SIGMA = 0.3;
/** How far two lots of one reagent read apart, dKH: common practice. */
const LOT_SIGMA_DKH = 0.2;
/** A plain description of the aeration is trusted to a factor of two (common practice). */
const LN_KLA_SIGMA = Math.LN2;
/** Carbon fixed in the light, as the plan has it: ± mmol/L/day (common practice). */
const GROSS_SIGMA = 0.5;
/** Fewer readings of pH say nothing of day and night. */
const LEAST_PH_READINGS = 3;

const use = ({ corals }: Scenario): Parameter => ({
  id: 'use',
  title: say.fitted.use,
  unit: 'dKH/day',
  initial: Math.max(0.1, corals.useDkhPerDay),
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
  title: say.fitted.growth,
  unit: '%/day',
  initial: corals.growthPercentPerDay,
  min: 0,
  max: quantityAt(['corals', 'growthPercentPerDay']).quantity.max,
  step: 0.1,
  prior: { mean: corals.growthPercentPerDay, sigma: GROWTH_SIGMA },
  apply: (scenario, growthPercentPerDay) => ({
    ...scenario,
    corals: { ...scenario.corals, growthPercentPerDay },
  }),
});

const start = ({ tank }: Scenario): Parameter => ({
  id: 'start',
  title: say.fitted.start,
  unit: 'dKH',
  initial: tank.alkalinityDkh,
  ...{ min: 0.5, max: 30, step: 0.05 },
  apply: (scenario, alkalinityDkh) => ({ ...scenario, tank: { ...scenario.tank, alkalinityDkh } }),
});

const lnKLa = ({ gas }: Scenario): Parameter => ({
  id: 'lnKLa',
  title: say.fitted.lnKLa,
  unit: '',
  initial: Math.log(Math.max(0.05, gas.kLaPerH)),
  ...{ min: Math.log(0.02), max: Math.log(20), step: 0.03 },
  prior: { mean: Math.log(Math.max(0.05, gas.kLaPerH)), sigma: LN_KLA_SIGMA },
  apply: (scenario, value) => ({ ...scenario, gas: { ...scenario.gas, kLaPerH: Math.exp(value) } }),
});

const gross = ({ photosynthesis }: Scenario): Parameter => ({
  id: 'gross',
  title: say.fitted.gross,
  unit: 'mmol/L/day',
  initial: photosynthesis.grossMmolPerLPerDay,
  ...{ min: 0, max: 10, step: 0.03 },
  prior: { mean: photosynthesis.grossMmolPerLPerDay, sigma: GROSS_SIGMA },
  apply: (scenario, grossMmolPerLPerDay) => ({
    ...scenario,
    photosynthesis: { ...scenario.photosynthesis, grossMmolPerLPerDay },
  }),
});

const lotOffset = (name: string, lot: number): Parameter => ({
  id: `lot ${lot}`,
  title: say.fitted.lot(name || say.fitted.nameless),
  unit: 'dKH',
  initial: 0,
  ...{ min: -3, max: 3, step: 0.05 },
  prior: { mean: 0, sigma: LOT_SIGMA_DKH },
  apply: (scenario) => scenario,
  lot,
});

/** What the readings of this log can speak to. */
export function parametersOf({ scenario, observations, lots }: Happened): Parameter[] {
  const phReadings = observations.filter(({ kind }) => kind === 'ph').length;
  return [
    ...[use, growth, start].map((make) => make(scenario)),
    ...(phReadings >= LEAST_PH_READINGS ? [lnKLa(scenario), gross(scenario)] : []),
    ...lots.slice(1).map((name, i) => lotOffset(name, i + 1)),
  ];
}
