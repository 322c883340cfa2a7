import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { dumpHolds, fullestReservoirL, RIM, strongestMixGPerL } from '../plan/fullDump';
import type { PlanQuestion } from '../plan/threePlans';
import { withReference } from '../plan/withReference';
import { margins, needsOf, type Need } from './needs';
import { oddsOf, type AwayOdds, type Unsure } from './odds';
import { filled } from './filled';
import { atHome, leftWith, provided, type Provided, type Provision } from './provided';

/** The plan's question, for days on which nobody looks. */
export interface AwayQuestion extends Pick<PlanQuestion, 'now'>, Unsure {
  /** Whole days away, 1 or more. */
  readonly days: number;
  /** Somebody comes every so many days; 0: nobody does. */
  readonly visitDays: number;
}

/** What whoever comes fills the reservoir up with, and how much at most. */
export interface TopUp {
  readonly with: 'plain' | 'mix';
  readonly everyDays: number;
  readonly mostL: number;
}

/** The most that may stand in the reservoir where all that is needed would be too much, and for what reason. */
export interface Fullest {
  readonly litres: number;
  /** More of today's mix at once does harm; more of anything runs onto the floor. */
  readonly why: 'harm' | 'rim';
}

/** What would do where the limits are not kept for so long, with visits or without. */
export type WayOut =
  /** Fewer days away. */
  | { readonly kind: 'fewerDays'; readonly days: number }
  /** What is outside, or about to be, is put right first. */
  | { readonly kind: 'firstOfAll' };

/** What is to be filled before leaving, what comes of it, and how likely. */
export interface Away {
  readonly days: number;
  /** The reservoir first, then each pump's bottle. */
  readonly needs: readonly Need[];
  /** Shares above what is typed that the litres are for. */
  readonly margins: typeof margins;
  readonly provided: Provided;
  /** Somebody comes every so many days, as was asked or as it takes; 0: nobody does. */
  readonly comesDays: number;
  /** What would become of it as was asked, where more visits keep the limits, or keep them longer. */
  readonly asked: Provided | undefined;
  /** Undefined where nobody needs to. */
  readonly topUp: TopUp | undefined;
  readonly fullest: Fullest | undefined;
  readonly odds: AwayOdds;
  /** The days away as a trial; undefined where plain water tops up a mix, which no plan can say. */
  readonly trial: Scenario | undefined;
  readonly wayOut: WayOut | undefined;
}

/** Fewer tell no odds; more make a keeper wait. */
const MEMBERS = 40;
/** A mix weaker than this share of today's is plain water. */
const LEAST_STRENGTH = 0.05;

/** The bottles as full as they have to be, where they are not. */
function withBottles(now: Scenario, needs: readonly Need[]): Scenario {
  const dosers = now.dosers.map((doser, i) => {
    const need = needs.find(({ pump }) => pump === i);
    return { ...doser, stockL: Math.max(doser.stockL, need?.needL ?? 0) };
  });
  return { ...now, dosers };
}

/** Whether the top-off brings alkalinity. */
const carries = ({ topOff }: Scenario): boolean =>
  topOff.reservoirL > 0 && topOff.additive !== 'none' && topOff.gramsPerL > 0;

/** Whether a vessel holds what may be needed. */
const suffices = ({ hasL, needL }: Need): boolean => needL !== undefined && hasL >= needL;

interface Stock {
  readonly now: Scenario;
  readonly needs: readonly Need[];
  readonly reservoir: Need;
}

const provision = (
  kind: Provision['kind'],
  scenario: Scenario,
  refillEveryDays = 0,
): Provision => ({ kind, scenario, refillEveryDays });

/** The reservoir as it is, filled up on each visit: with plain water, or with its mix. */
function* onVisits({ now, needs }: Stock, everyDays: number): Generator<Provision> {
  const stocked = withBottles(now, needs);
  yield provision('toppedUp', stocked, everyDays);
  if (carries(stocked)) yield provision('mixed', stocked, everyDays);
}

/** The reservoir filled for all days: larger only where all of it at once does no harm and stays off the floor. */
function* forAllDays({ now, needs, reservoir }: Stock): Generator<Provision> {
  const stocked = withBottles(now, needs);
  const { topOff } = stocked;
  if (suffices(reservoir)) {
    yield provision(needs.every(suffices) ? 'asIs' : 'larger', stocked);
  } else if (reservoir.needL !== undefined) {
    const full = filled(stocked, reservoir.needL);
    if (!dumpHolds(full, RIM)) return;
    if (!carries(stocked)) yield provision('plain', full);
    else if (dumpHolds(full)) yield provision('larger', full);
    else {
      const gramsPerL = strongestMixGPerL(full);
      if (gramsPerL >= LEAST_STRENGTH * topOff.gramsPerL) {
        yield provision('thinner', filled(stocked, reservoir.needL, gramsPerL));
      }
    }
  } else return;
  if (carries(stocked)) {
    yield provision('plain', filled(stocked, Math.max(topOff.reservoirL, reservoir.needL!), 0));
  }
}

/**
 * The tank as it runs now, left alone: what has to stand in reservoir and bottles, run by the engine
 * where it is used fastest; the smallest change that lasts and keeps the limits at every use that is
 * possible, more visits where nothing else does, or else what keeps them longest; and the odds over
 * tanks that this may be.
 */
export function away(question: AwayQuestion, options: SimulationOptions = usualOptions): Away {
  const { days, visitDays, giveOrTakeDkhPerDay } = question;
  const now = withReference(question.now, options);
  const needs = needsOf(now, days, options);
  const reservoir = needs[0]!;
  const stock = { now, needs, reservoir };
  const home = atHome(now, giveOrTakeDkhPerDay, options);
  const longest = (provisions: Iterable<Provision>, first?: Provided): Provided | undefined => {
    let best = first;
    for (const one of provisions) {
      if (best && best.insideDays >= days) break;
      const found = provided(one, days, home, options);
      if (!best || found.insideDays > best.insideDays) best = found;
    }
    return best;
  };
  const refilled = (everyDays: number): Need => needsOf(now, everyDays, options)[0]!;
  const isVisited = visitDays > 0 && visitDays < days;
  const canVisit = isVisited && !suffices(reservoir) && suffices(refilled(visitDays));
  const visited = canVisit ? longest(onVisits(stock, visitDays)) : undefined;
  const kept = longest(forAllDays(stock), visited);
  // As it is, until the reservoir is empty: what is left where nothing may stand in a larger one.
  const asked = kept ?? provided(provision('asIs', withBottles(now, needs)), days, home, options);
  const oftenest = Math.floor(reservoir.surelyDays ?? 0);
  const mayCome = oftenest >= 1 && !(isVisited && visitDays <= oftenest);
  const more = asked.insideDays < days && mayCome ? longest(onVisits(stock, oftenest)) : undefined;
  const isBetter = more !== undefined && more.insideDays > asked.insideDays;
  const told = isBetter ? more : asked;
  const comesDays = isBetter ? oftenest : isVisited ? visitDays : 0;
  const { insideDays, refillEveryDays } = told;
  return {
    ...{ days, needs, margins, provided: told, comesDays },
    asked: isBetter ? asked : undefined,
    topUp:
      refillEveryDays === 0
        ? undefined
        : {
            with: told.kind === 'mixed' ? 'mix' : 'plain',
            ...{ everyDays: refillEveryDays, mostL: refilled(refillEveryDays).needL! },
          },
    fullest: suffices(reservoir) ? undefined : fullestOf(now, reservoir),
    trial: trialOf(told, days),
    wayOut:
      insideDays >= days
        ? undefined
        : insideDays >= 1
          ? { kind: 'fewerDays', days: insideDays }
          : { kind: 'firstOfAll' },
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

/** How full the reservoir may be, where all that is needed would be too much. */
function fullestOf(now: Scenario, { hasL, needL }: Need): Fullest | undefined {
  const full = filled(now, needL ?? hasL);
  const { reservoirL } = full.topOff;
  const rim = fullestReservoirL(full, RIM);
  const harm = carries(now) ? fullestReservoirL(full) : Infinity;
  if (Math.min(rim, harm) >= reservoirL) return undefined;
  return harm < rim ? { litres: harm, why: 'harm' } : { litres: rim, why: 'rim' };
}
