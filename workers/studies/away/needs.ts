import { toDecimals } from '../../../shared/units/digits';
import { quantityAt } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import type { SimulationOptions } from '../../engine/simulation';
import { delivery, evaporation } from '../fit/doubts';
import { filled } from './filled';
import { LeftTank, type LeftRun } from './leftTank';
import { unattended } from './unattended';

/** What may be used of one vessel at most. */
export interface Most {
  /** Which pump, counted from 0; undefined for the top-off's reservoir, which is always the first. */
  readonly pump: number | undefined;
  /** The pump's name. */
  readonly name: string | undefined;
  /** What may be used at most, rounded up to what can be filled, L; undefined: more than can be set. */
  readonly needL: number | undefined;
  /** The same as it was run, L. */
  readonly mostUsedL: number | undefined;
  /** At most so much of it in a day, rounded up likewise, L, and as it was run. */
  readonly dailyL: number;
  readonly dailyMostL: number;
}

/** What one vessel holds, what the days without the keeper take of it, and how long it lasts. */
export interface Need extends Most {
  readonly hasL: number;
  /** What is used if everything is as it was typed, L. */
  readonly usedL: number;
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
  const step = litres >= 5 ? 0.5 : litres >= 1 ? 0.1 : litres >= 0.2 ? 0.05 : 0.01;
  return toDecimals(Math.ceil(litres / step) * step, 2);
}

const inDays = (hours: number | undefined) => (hours === undefined ? undefined : hours / 24);

/** A tank whose vessels never run dry. */
function ample(left: Scenario): Scenario {
  const dosers = left.dosers.map((doser) => ({ ...doser, stockL: LARGEST_L.bottle }));
  return { ...filled(left, LARGEST_L.reservoir), dosers };
}

/** What may be used of reservoir and bottles in so many days, by the engine, where it is used fastest. */
export function mostOf(now: Scenario, days: number, options: SimulationOptions): Most[] {
  const largest = ample(unattended(now, days));
  const full = new LeftTank(largest, options);
  const [most, mostDosed] = [thirstiest(largest), mostGiven(largest)].map((one) => full.run(one));
  // A tank that leaves the range of its chemistry tells nothing of the days after.
  const needed = ({ run }: LeftRun, share: number, largestL: number, dryH: number | undefined) => {
    const mostL = share * largestL * (1 + PHASE_SHARE);
    const isTold = dryH === undefined && !run.stopped;
    return {
      mostUsedL: isTold ? mostL : undefined,
      needL: isTold ? upTo(mostL) : undefined,
      dailyL: upTo(mostL / days),
      dailyMostL: mostL / days,
    };
  };
  const { reservoirUsed, reservoirDryH } = most!;
  const { bottlesUsed, bottlesDryH } = mostDosed!;
  return [
    {
      ...{ pump: undefined, name: undefined },
      ...needed(most!, reservoirUsed, LARGEST_L.reservoir, reservoirDryH),
    },
    ...now.dosers.flatMap(({ name, mlPerDay }, i): Most[] =>
      mlPerDay > 0
        ? [
            {
              ...{ pump: i, name },
              ...needed(mostDosed!, bottlesUsed[i]!, LARGEST_L.bottle, bottlesDryH[i]),
            },
          ]
        : [],
    ),
  ];
}

/**
 * Reservoir and bottles of a plan over so many days, by the engine, as they are used as set and at most.
 * A tank without a top-off needs plain water all the same.
 */
export function needsOf(now: Scenario, days: number, options: SimulationOptions): Need[] {
  const left = unattended(now, days);
  const asSet = new LeftTank(left, options);
  const [set, thirsty, given] = [left, thirstiest(left), mostGiven(left)].map((one) =>
    asSet.run(one),
  );
  const largest = ample(left);
  const used = new LeftTank(largest, options).run(largest);
  return mostOf(now, days, options).map((most): Need => {
    const { pump, needL } = most;
    if (pump !== undefined) {
      return {
        ...{ ...most, hasL: left.dosers[pump]!.stockL },
        usedL: used.bottlesUsed[pump]! * LARGEST_L.bottle,
        lastsDays: inDays(set!.bottlesDryH[pump]),
        surelyDays: inDays(given!.bottlesDryH[pump]),
      };
    }
    const { reservoirL } = left.topOff;
    // Nothing stands in a reservoir that is not there.
    const dry = reservoirL === 0 && needL !== 0 ? 0 : undefined;
    return {
      ...{ ...most, hasL: reservoirL, usedL: used.reservoirUsed * LARGEST_L.reservoir },
      lastsDays: dry ?? inDays(set!.reservoirDryH),
      surelyDays: dry ?? inDays(thirsty!.reservoirDryH),
    };
  });
}
