import { toDecimals } from '../../../shared/units/digits';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import type { SimulationOptions } from '../../engine/simulation';
import { delivery, evaporation } from '../fit/doubts';
import { filled } from './filled';
import { LeftTank, type LeftRun } from './leftTank';
import { unattended } from './unattended';

/** What one vessel holds, what the days without the keeper take of it, and how long it lasts. */
export interface Need {
  /** Which pump, counted from 0; undefined for the top-off's reservoir, which is always the first. */
  readonly pump: number | undefined;
  /** The pump's name. */
  readonly name: string | undefined;
  readonly hasL: number;
  /** What is used if everything is as it was typed, L. */
  readonly usedL: number;
  /** What may be used at most, rounded up to what can be filled, L; undefined: more than can be set. */
  readonly needL: number | undefined;
  /** At most so much of it in a day, L. */
  readonly dailyL: number;
  /** Days until it is empty; undefined when it lasts. */
  readonly lastsDays: number | undefined;
  /** The same where it is used fastest. */
  readonly surelyDays: number | undefined;
}

/** How many σ of a typed number's doubt the margin is. */
export const MARGIN_SIGMAS = 2;
/** Shares above what is typed that litres are reckoned with: of evaporation, and of what a pump gives. */
export const margins = {
  evaporation: MARGIN_SIGMAS * evaporation.sigma,
  delivery: MARGIN_SIGMAS * delivery.sigma,
} as const;

const LARGEST_L = {
  reservoir: quantityAt(['topOff', 'reservoirL']).quantity.max,
  bottle: quantityAt(['dosers', 0, 'stockL']).quantity.max,
};

/** A pump that gives more than was set does so in the hours that it has, too. */
function pumpsGive(scenario: Scenario, share: number): Scenario {
  const more = delivery.more(scenario, share);
  return {
    ...more,
    dosers: more.dosers.map((doser) => ({
      ...doser,
      schedule: {
        ...doser.schedule,
        pumpMlPerMin: doser.schedule.pumpMlPerMin * (1 + share),
      },
    })),
  };
}

/** As much as may evaporate; what pumps bring need not be topped up, so they give the least. */
export const thirstiest = (scenario: Scenario): Scenario =>
  pumpsGive(evaporation.more(scenario, margins.evaporation), -margins.delivery);

/** As much as pumps may give. */
export const mostGiven = (scenario: Scenario): Scenario => pumpsGive(scenario, margins.delivery);

/** In a vessel of that size the pump runs in another phase than in the one that was measured in. */
const PHASE_SHARE = 0.005;

/** As fine as anybody fills. */
function upTo(litres: number): number {
  const step = litres >= 5 ? 0.5 : litres >= 1 ? 0.1 : 0.05;
  return toDecimals(Math.ceil((litres * (1 + PHASE_SHARE)) / step) * step, 2);
}

const inDays = (hours: number | undefined) => (hours === undefined ? undefined : hours / 24);

/**
 * Reservoir and bottles of a plan over so many days, by the engine, as they are used as set and at most.
 * A tank without a top-off needs plain water all the same.
 */
export function needsOf(now: Scenario, days: number, options: SimulationOptions): Need[] {
  const left = unattended(now, days);
  const { topOff, dosers } = left;
  const asSet = new LeftTank(left, options);
  const ample = filled(left, LARGEST_L.reservoir);
  const largest: Scenario = {
    ...ample,
    dosers: dosers.map((doser) => ({ ...doser, stockL: LARGEST_L.bottle })),
  };
  const full = new LeftTank(largest, options);
  const [set, thirsty, given] = [left, thirstiest(left), mostGiven(left)].map((one) =>
    asSet.run(one),
  );
  const [used, most, mostDosed] = [largest, thirstiest(largest), mostGiven(largest)].map((one) =>
    full.run(one),
  );
  const perDay = (share: number, largestL: number) => upTo((share * largestL) / days);
  // A tank that leaves the range of its chemistry tells nothing of the days after.
  const needed = ({ run }: LeftRun, share: number, largestL: number, dryH: number | undefined) =>
    dryH === undefined && !run.stopped ? upTo(share * largestL) : undefined;
  const needL = needed(most!, most!.reservoirUsed, LARGEST_L.reservoir, most!.reservoirDryH);
  // Nothing stands in a reservoir that is not there.
  const dry = topOff.reservoirL === 0 && needL !== 0 ? 0 : undefined;
  const reservoir: Need = {
    ...{ pump: undefined, name: undefined, hasL: topOff.reservoirL, needL },
    usedL: used!.reservoirUsed * LARGEST_L.reservoir,
    dailyL: perDay(most!.reservoirUsed, LARGEST_L.reservoir),
    lastsDays: dry ?? inDays(set!.reservoirDryH),
    surelyDays: dry ?? inDays(thirsty!.reservoirDryH),
  };
  const bottles = dosers.map(({ name, stockL }, i): Need => ({
    ...{ pump: i, name, hasL: stockL, usedL: used!.bottlesUsed[i]! * LARGEST_L.bottle },
    needL: needed(
      mostDosed!,
      mostDosed!.bottlesUsed[i]!,
      LARGEST_L.bottle,
      mostDosed!.bottlesDryH[i],
    ),
    dailyL: perDay(mostDosed!.bottlesUsed[i]!, LARGEST_L.bottle),
    lastsDays: inDays(set!.bottlesDryH[i]),
    surelyDays: inDays(given!.bottlesDryH[i]),
  }));
  return [reservoir, ...bottles.filter((_, i) => dosers[i]!.mlPerDay > 0)];
}
