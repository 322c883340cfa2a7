import { group, mean } from 'd3-array';
import type { TankEvent } from '../../../shared/events/event';
import { pouredIn } from '../../../shared/events/addition';
import { changeOfWater } from '../../../shared/events/waterChange';
import { hoursOf, localTimeOf } from '../../../shared/log/localTime';
import {
  inOrder,
  tellsOfWater,
  USUAL_ACCURACY_DKH,
  type Reading,
} from '../../../shared/log/reading';
import { byHand, type ByHand } from './byHand';
import type { Leap } from './leap';
import { metalsReadH, type Metals } from './metalsMoved';
import { sawtoothDkh } from './sawtooth';
import { earlierOf, type Earlier, type RanUntil } from './turnedAt';
import type { Scenario } from '../../../shared/scenario/schema';

/** One number of the log that the model has to meet. */
export interface Observation {
  readonly kind: 'alkalinity' | 'ph';
  /** Hours since the start of the log. */
  readonly timeH: number;
  readonly value: number;
  /** One σ, in the unit of the value. */
  readonly sigma: number;
  /** 0 for the first reagent lot, 1 for the next … */
  readonly lot: number;
  /** Where in the log that was asked about the readings stand that say so: one, or neighbours taken together. */
  readonly readings: readonly number[];
}

/** Corals added or taken out: what takes alkalinity is more or less by so much from then on. */
export interface Stocking {
  readonly at: string;
  /** Hours since the start of the log, above 0. */
  readonly atH: number;
  readonly percent: number;
}

/** A log as a tank that can be run: where it started, what was done, what was read. */
export interface Happened {
  readonly startAt: string;
  readonly endH: number;
  /** The plan with the log's first water; pumps and top-off as the plan has them. */
  readonly scenario: Scenario;
  readonly events: readonly TankEvent[];
  /** In order of time. */
  readonly observations: readonly Observation[];
  readonly lots: readonly string[];
  /** Whether anything was poured in by hand. */
  readonly poured: boolean;
  /** What was dosed before each turn of the log. */
  readonly earlier: readonly Earlier[];
  /** Corals that were added or taken out on the way, in order of time. */
  readonly stockings: readonly Stocking[];
  /** Where the readings themselves say that something was done and not noted, in order of time. */
  readonly leaps: readonly Leap[];
  /** When calcium and magnesium were last read, hours. */
  readonly metalsReadH: Metals;
  /** Where the fit begins. */
  readonly guess: ByHand;
}

/** A probe between two readings, as the solver of gas exchange trusts it: common practice. */
const PH_SIGMA = 0.05;
/** A reading and what was done in the same minute: the test comes first. */
const AFTER_H = 1 / 60;

const firstOf = (readings: readonly Reading[], name: keyof Reading): number | undefined =>
  readings.find((reading) => reading[name] !== undefined)?.[name] as number | undefined;

/** The plan with the water that the log begins with. */
function scenarioOf(plan: Scenario, readings: readonly Reading[], startH: number, days: number) {
  const { tank, corals } = plan;
  return {
    ...plan,
    days,
    start: { ...plan.start, carbon: 'settledCycle', omegaReference: 0, clockHour: startH % 24 },
    corals: { ...corals, measuredAs: 'use' },
    tank: {
      ...tank,
      alkalinityDkh: firstOf(readings, 'alkalinityDkh') ?? tank.alkalinityDkh,
      calciumMgPerL: firstOf(readings, 'calciumMgPerL') ?? tank.calciumMgPerL,
      magnesiumMgPerL: firstOf(readings, 'magnesiumMgPerL') ?? tank.magnesiumMgPerL,
      salinityPractical: firstOf(readings, 'salinityPractical') ?? tank.salinityPractical,
      tempC: firstOf(readings, 'tempC') ?? tank.tempC,
    },
  } satisfies Scenario;
}

function eventsOf(readings: readonly Reading[], scenario: Scenario, startH: number): TankEvent[] {
  return readings.flatMap(({ at, additive, grams, waterChangePercent }) => {
    const timeH = hoursOf(at) - startH + AFTER_H;
    return [
      ...(waterChangePercent ? [changeOfWater(scenario, waterChangePercent)(timeH)] : []),
      ...(additive && grams ? [pouredIn(timeH, additive, grams)] : []),
    ];
  });
}

function observationsOf(
  readings: readonly Reading[],
  log: readonly Reading[],
  lots: readonly string[],
  startH: number,
  gulps: number,
) {
  const indexOf = new Map(log.map((reading, i) => [reading, i]));
  return readings.flatMap((reading): Observation[] => {
    const { at, alkalinityDkh, phNbs, accuracyDkh, lot } = reading;
    const timeH = hoursOf(at) - startH;
    const where = { lot: Math.max(0, lots.indexOf(lot ?? '')), readings: [indexOf.get(reading)!] };
    const same = { timeH, ...where };
    const sigma = Math.hypot(accuracyDkh ?? USUAL_ACCURACY_DKH, gulps);
    return [
      ...(alkalinityDkh === undefined
        ? []
        : [{ ...same, kind: 'alkalinity' as const, value: alkalinityDkh, sigma }]),
      ...(phNbs === undefined
        ? []
        : [{ ...same, kind: 'ph' as const, value: phNbs, sigma: PH_SIGMA }]),
    ];
  });
}

/** More readings than this tell no more, and take longer: neighbours are taken together. */
const MOST_OBSERVATIONS = 200;

/** Neighbours of one kind and lot as one reading, their mean. */
function together(all: readonly Observation[]): Observation[] {
  const every = Math.ceil(all.length / MOST_OBSERVATIONS);
  if (every <= 1) return [...all];
  const groups = group(all, ({ kind, lot }) => `${kind} ${lot}`);
  return [...groups.values()]
    .flatMap((own) =>
      Array.from({ length: Math.ceil(own.length / every) }, (_, i): Observation => {
        const few = own.slice(i * every, (i + 1) * every);
        const of = (read: (one: Observation) => number) => mean(few, read)!;
        const sigma = of((one) => one.sigma) / Math.sqrt(few.length);
        return {
          ...few[0]!,
          sigma,
          timeH: of(({ timeH }) => timeH),
          value: of(({ value }) => value),
          readings: few.flatMap((one) => one.readings),
        };
      }),
    )
    .toSorted((a, b) => a.timeH - b.timeH);
}

/**
 * Lines up a log for the fit. Pumps and top-off are the plan's, and before a turn what they were then;
 * doses and water changes are the log's.
 */
export function asItHappened(
  plan: Scenario,
  log: readonly Reading[],
  ran: readonly RanUntil[] = [],
): Happened {
  const readings = inOrder(log).filter(tellsOfWater);
  const startH = Math.floor(hoursOf(readings[0]!.at));
  const lastH = hoursOf(readings.at(-1)!.at) - startH;
  const scenario = scenarioOf(plan, readings, startH, Math.max(1, lastH / 24));
  const events = eventsOf(readings, scenario, startH);
  const tested = readings.filter(({ alkalinityDkh }) => alkalinityDkh !== undefined);
  const lots = [...new Set(tested.map(({ lot }) => lot ?? ''))];
  const earlier = earlierOf(ran, startH, lastH);
  const stockings = readings.flatMap(({ at, coralsPercent: percent = 0 }): Stocking[] => {
    const atH = hoursOf(at) - startH + AFTER_H;
    return percent === 0 ? [] : [{ at, atH, percent }];
  });
  return {
    startAt: localTimeOf(startH),
    // A dose in the last line has gone in, and corals that came with it are there, when the log ends.
    endH: [...events.map(({ timeH }) => timeH), ...stockings.map(({ atH }) => atH)].reduce(
      (endH, timeH) => Math.max(endH, timeH),
      lastH,
    ),
    scenario,
    events,
    observations: together(observationsOf(readings, log, lots, startH, sawtoothDkh(scenario))),
    lots,
    poured: readings.some(({ grams = 0 }) => grams > 0),
    guess: byHand({ ...scenario, ...earlier[0]?.dosing }, readings),
    ...{ earlier, stockings, leaps: [], metalsReadH: metalsReadH(readings, startH) },
  };
}
