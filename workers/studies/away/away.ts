import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { dumpHolds, fullestReservoirL, strongestMixGPerL } from '../plan/fullDump';
import type { PlanQuestion } from '../plan/threePlans';
import { withReference } from '../plan/withReference';
import { margins, needsOf, type Need } from './needs';
import { oddsOf, type AwayOdds, type Unsure } from './odds';
import { atHome, filled, leftWith, provided, type Provided, type Provision } from './provided';

/** The plan's question, for days on which nobody looks. */
export interface AwayQuestion extends Pick<PlanQuestion, 'now'>, Unsure {
  /** Whole days away, 1 or more. */
  readonly days: number;
  /** Somebody comes every so many days; 0: nobody does. */
  readonly visitDays: number;
}

/** What is to be filled before leaving, what comes of it, and how likely. */
export interface Away {
  readonly days: number;
  readonly visitDays: number;
  /** The reservoir first, then each pump's bottle. */
  readonly needs: readonly Need[];
  /** Shares above what is typed that the litres are for. */
  readonly margins: typeof margins;
  /** At most so much is topped up at a visit, L; 0 where nobody needs to. */
  readonly atVisitL: number;
  readonly provided: Provided;
  /** The most that may stand in the reservoir of today's mix, L, where all that is needed would be too much. */
  readonly fullestL: number | undefined;
  readonly odds: AwayOdds;
  /** The days away as a trial; undefined where plain water tops up a mix, which no plan can say. */
  readonly trial: Scenario | undefined;
  /** What would do where the limits are not kept for so long. */
  readonly wayOut: WayOut | undefined;
}

export type WayOut =
  /** Somebody fills the reservoir up with its mix, made beforehand, so often. */
  | { readonly kind: 'visits'; readonly everyDays: number }
  /** Fewer days away. */
  | { readonly kind: 'fewerDays'; readonly days: number }
  /** What is outside, or about to be, is put right first. */
  | { readonly kind: 'firstOfAll' };

/** Fewer tell no odds; more make a keeper wait. */
const MEMBERS = 40;
/** A mix weaker than this share of today's is plain water. */
const LEAST_STRENGTH = 0.05;

const comes = ({ days, visitDays }: AwayQuestion): boolean => visitDays > 0 && visitDays < days;

/** The bottles as full as they have to be, where they are not. */
function withBottles(now: Scenario, needs: readonly Need[]): Scenario {
  const dosers = now.dosers.map((doser) => {
    const need = needs.find(({ name }) => name === doser.name);
    return { ...doser, stockL: Math.max(doser.stockL, need?.needL ?? 0) };
  });
  return { ...now, dosers };
}

/** Whether the top-off brings alkalinity. */
const carries = ({ topOff }: Scenario): boolean =>
  topOff.reservoirL > 0 && topOff.additive !== 'none' && topOff.gramsPerL > 0;

/** Whether a vessel holds what may be needed. */
const suffices = ({ hasL, needL }: Need): boolean => needL !== undefined && hasL >= needL;

/** What can be left, the smallest change first; a stronger or larger dump than today's only if it harms nothing. */
function* provisionsOf(
  question: AwayQuestion,
  now: Scenario,
  needs: readonly Need[],
  onVisits: Need | undefined,
): Generator<Provision> {
  const reservoir = needs.find(({ name }) => name === undefined);
  const stocked = withBottles(now, needs);
  const provision = (kind: Provision['kind'], scenario: Scenario, refillEveryDays = 0) => ({
    ...{ kind, scenario, refillEveryDays },
  });
  if (!reservoir || suffices(reservoir)) {
    const isEnough = needs.every(suffices);
    yield provision(isEnough ? 'asIs' : 'larger', stocked);
  }
  if (!reservoir) return;
  const { topOff } = stocked;
  const hasMix = carries(stocked);
  if (onVisits && suffices(onVisits)) {
    yield provision('toppedUp', stocked, question.visitDays);
    if (hasMix) yield provision('mixed', stocked, question.visitDays);
  }
  const litres = Math.max(topOff.reservoirL, reservoir.needL ?? Infinity);
  const full = filled(stocked, litres);
  if (!suffices(reservoir)) {
    if (!hasMix) yield provision('plain', full);
    else if (dumpHolds(full)) yield provision('larger', full);
    else {
      const gramsPerL = strongestMixGPerL(full);
      if (gramsPerL >= LEAST_STRENGTH * topOff.gramsPerL) {
        yield provision('thinner', filled(stocked, litres, gramsPerL));
      }
    }
  }
  if (hasMix) yield provision('plain', filled(stocked, litres, 0));
}

/**
 * The tank as it runs now, left alone: what has to stand in reservoir and bottles, run by the engine
 * where it is used fastest; the smallest change that lasts and keeps the limits at every use that is
 * possible, or else the one that keeps them longest; and the odds over tanks that this may be.
 */
export function away(question: AwayQuestion, options: SimulationOptions = usualOptions): Away {
  const { days, visitDays, giveOrTakeDkhPerDay } = question;
  const now = withReference(question.now, options);
  const needs = needsOf(now, days, options);
  const [onVisits] = comes(question) ? needsOf(now, visitDays, options) : [];
  const isTopOff = onVisits?.name === undefined ? onVisits : undefined;
  const home = atHome(now, giveOrTakeDkhPerDay, options);
  let best: Provided | undefined;
  for (const provision of provisionsOf(question, now, needs, isTopOff)) {
    const found = provided(provision, days, home, options);
    if (!best || found.insideDays > best.insideDays) best = found;
    if (best.insideDays >= days) break;
  }
  const told = best!;
  const [reservoir] = needs;
  const tooFull =
    reservoir?.name === undefined && reservoir !== undefined && !suffices(reservoir)
      ? fullestOf(now, reservoir)
      : undefined;
  const wayOutOf = ({ insideDays }: Provided): WayOut => {
    const everyDays = Math.floor(reservoir?.surelyDays ?? 0);
    if (carries(now) && everyDays >= 1 && !(comes(question) && visitDays <= everyDays)) {
      const scenario = withBottles(now, needs);
      const mixed = { kind: 'mixed', scenario, refillEveryDays: everyDays } as const;
      if (provided(mixed, days, home, options).insideDays >= days) {
        return { kind: 'visits', everyDays };
      }
    }
    return insideDays >= 1 ? { kind: 'fewerDays', days: insideDays } : { kind: 'firstOfAll' };
  };
  return {
    ...{ days, visitDays, needs, margins, provided: told, fullestL: tooFull },
    trial: trialOf(told, days),
    atVisitL: told.refillEveryDays > 0 ? (isTopOff?.needL ?? 0) : 0,
    wayOut: told.insideDays < days ? wayOutOf(told) : undefined,
    odds: oddsOf(
      leftWith(told, days),
      question,
      told.anyway.map(({ id }) => id),
      MEMBERS,
      options,
    ),
  };
}

function trialOf(found: Provided, days: number): Scenario | undefined {
  if (found.kind === 'toppedUp' && carries(found.scenario)) return undefined;
  return { ...leftWith(found, days), faults: [] };
}

/** How full of today's mix the reservoir may be, where all that is needed of it would be too much. */
function fullestOf(now: Scenario, { hasL, needL }: Need): number | undefined {
  if (!carries(now)) return undefined;
  const litres = needL ?? hasL;
  const fullestL = fullestReservoirL(filled(now, litres));
  return fullestL < litres ? fullestL : undefined;
}
