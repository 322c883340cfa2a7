import { toFigures } from '../../../shared/units/digits';
import { quantityAt, type FieldPath } from '../../../shared/scenario/fields';
import type { Scenario } from '../../../shared/scenario/schema';
import { lastOf, rowsBetween, usePerDay } from '../../../shared/verdict/measures';
import { readColumn, type LedgerRow, type Trace } from '../../../shared/trace/trace';
import type { Run } from '../../engine/run';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { filled } from '../away/filled';
import { LeftTank } from '../away/leftTank';
import { evaporation } from '../fit/doubts';
import { withUse } from '../plan/useEnds';
import { withReference } from '../plan/withReference';

/** What went out of a bottle or of the top-off's reservoir, and in how many days. */
export interface Drawn {
  /** Which pump, counted from 0; undefined for the top-off. */
  readonly pump: number | undefined;
  readonly litres: number;
  readonly days: number;
}

export interface DeliveryQuestion {
  /** The tank as it stands, with the use that the log was fitted with. */
  readonly now: Scenario;
  readonly drawn: Drawn;
  /** Whether that use was read from a log: what came in unbooked was then taken, too. */
  readonly isRead: boolean;
}

/** Delivered against set, and what that means for the use. */
export interface Delivered {
  readonly drawn: Drawn;
  /** What the plan gives in those days, L. */
  readonly setL: number;
  /** In how many days the plan would have used as much. */
  readonly setDays: number;
  /** What was given, in shares of what is set, and one σ of it. */
  readonly ratio: number;
  readonly ratioSigma: number;
  /** Whether it differs by more than two σ. */
  readonly differs: boolean;
  /** Alkalinity that came in a day beside what the log was read with, dKH; less where it is below 0. */
  readonly unbookedDkhPerDay: number;
  /** Two σ of it. */
  readonly giveOrTakeDkhPerDay: number;
  /** The use that the log was read with, and that which holds the same water with what was given, dKH a day. */
  readonly useDkhPerDay: number;
  readonly trueUseDkhPerDay: number;
  /** Calcium that came or went in a week beside it, mg/L. */
  readonly unbookedCalciumMgPerLPerWeek: number;
  /** A pump: what it is set to and what it gives, mL a day. The top-off: L a day. */
  readonly set: number;
  readonly given: number;
  /**
   * Where alkalinity goes in a week, dKH: as it runs, and if the pump is put right and stays set as it
   * is; undefined where no log says what is taken.
   */
  readonly aWeek: { readonly goesOnDkh: number; readonly putRightDkh: number } | undefined;
  /** If it left as tank water instead of vapour, salinity falls by so much in a week. */
  readonly leakPptPerWeek: number;
  /** The tank as it runs by what was measured. */
  readonly scenario: Scenario;
}

export type Delivery =
  /** The plan draws nothing from there: there is nothing to hold it against. */
  { readonly kind: 'nothingSet' } | { readonly kind: 'delivered'; readonly delivered: Delivered };

/** How well a filled bottle is known, one σ: common practice. */
const LITRES_SHARE = 0.03;
/** When it was empty is noticed to half a day: one σ of an even spread over a day, days. */
const NOTICED_DAYS = 1 / Math.sqrt(12);
const SIGMAS = 2;
const WEEK_DAYS = 7;
/** Whole days, so that the hour does not matter. */
const TAKEN_DAYS = 2;
const MOST_TRIES = 6;
const CLOSE_SHARE = 1e-3;
const CLOSE_DKH = 2e-3;

/** The tank as it runs, from full vessels that do not run dry, with nothing poured in. */
function ample(now: Scenario, days: number): Scenario {
  const plan = filled(now, quantityAt(['topOff', 'reservoirL']).quantity.max);
  const stockL = quantityAt(['dosers', 0, 'stockL']).quantity.max;
  return {
    ...plan,
    topOff: { ...(now.topOff.reservoirL > 0 ? plan.topOff : now.topOff), refillEveryDays: 0 },
    dosers: now.dosers.map((doser) => ({ ...doser, stockL })),
    ...{ days, additions: [], responses: [], faults: [] },
  };
}

/** The plan with what was measured in place of what is set. */
function withShare(now: Scenario, pump: number | undefined, share: number): Scenario {
  if (pump === undefined) return evaporation.more(now, share - 1);
  const dosers = now.dosers.map((doser, i) =>
    i === pump
      ? {
          ...doser,
          mlPerDay: doser.mlPerDay * share,
          schedule: { ...doser.schedule, pumpMlPerMin: doser.schedule.pumpMlPerMin * share },
        }
      : doser,
  );
  return { ...now, dosers };
}

/**
 * From how much a bottle or the reservoir lost in some days: what was given against what is set, by the
 * engine, and the use that goes with it. A dosing pump gives what it gives, whatever the corals take; the
 * top-off answers the level, so there it is what evaporates.
 */
export function deliveredOf(
  question: DeliveryQuestion,
  options: SimulationOptions = usualOptions,
): Delivery {
  const { drawn, isRead } = question;
  const { pump, litres, days } = drawn;
  const now = withReference(question.now, options);
  const use = now.corals.useDkhPerDay;
  const hours = Math.max(24, Math.ceil(days * 24));
  const tank = new LeftTank(ample(now, hours / 24), options);
  const runAs = (share: number, ownUse: number, ownDays = hours / 24) =>
    tank.run(withUse(withShare(ample(now, ownDays), pump, share), ownUse));
  const { topOff, dosers } = ample(now, days);
  const used = (share: number) => {
    const { reservoirUsed, bottlesUsed, run } = runAs(share, use);
    const all =
      pump === undefined
        ? reservoirUsed * topOff.reservoirL
        : (bottlesUsed[pump] ?? 0) * (dosers[pump]?.stockL ?? 0);
    return { litres: (all * days * 24) / hours, missingL: missingL(run.trace, topOff.deadBandL) };
  };
  const setL = used(1).litres;
  if (!(setL > 0)) return { kind: 'nothingSet' };
  const ratio = litres / setL;
  // Nobody knows where between two gulps the level was read: half a gulp is missing in the mean.
  const evenL = (tried: number): number => {
    const { litres: inGulps, missingL: missing } = used(tried);
    return inGulps + missing - topOff.deadBandL / 2;
  };
  const share = pump === undefined ? solvedShare(evenL, litres, ratio) : ratio;
  const isGiven = (row: LedgerRow) =>
    pump === undefined ? row.role === 'topOff' : row.pump === pump;
  const broughtIn = ({ trace }: Run): number =>
    (rowsBetween(trace, isGiven, 0, trace.rows - 1) * 24) / Math.max(1, trace.rows - 1);
  const [asSet, asGiven] = [runAs(1, use).run, runAs(share, use).run];
  const unbookedDkhPerDay = broughtIn(asGiven) - broughtIn(asSet);
  const trueUseDkhPerDay = isRead ? Math.max(0, use + unbookedDkhPerDay) : use;
  // In the water as it stands: over weeks with nothing done by hand it goes elsewhere, and use with it.
  const taken = (ownUse: number, ownShare = share): number =>
    usePerDay(runAs(ownShare, ownUse, TAKEN_DAYS).run.trace, 0, TAKEN_DAYS * 24);
  const wanted = Math.max(0, taken(use, 1) + unbookedDkhPerDay);
  const typedUse = isRead ? typedFor(taken, wanted, trueUseDkhPerDay) : use;
  const inTruth = runAs(share, typedUse).run;
  const calcium = ({ trace }: Run) => lastOf(trace, 'calcium_mg_l');
  const afterAWeek = (ownShare: number) =>
    lastOf(runAs(ownShare, typedUse, WEEK_DAYS).run.trace, 'alkalinity_dkh');
  const ratioSigma = ratio * Math.hypot(LITRES_SHARE, NOTICED_DAYS / days);
  const set = pump === undefined ? setL / days : (now.dosers[pump]?.mlPerDay ?? 0);
  const { salinityPractical, volumeL } = now.tank;
  return {
    kind: 'delivered',
    delivered: {
      ...{ drawn, setL, ratio, ratioSigma, unbookedDkhPerDay, trueUseDkhPerDay, set },
      differs: Math.abs(ratio - 1) > SIGMAS * ratioSigma,
      setDays: days * ratio,
      useDkhPerDay: use,
      unbookedCalciumMgPerLPerWeek: ((calcium(inTruth) - calcium(asSet)) * WEEK_DAYS * 24) / hours,
      given: set * ratio,
      giveOrTakeDkhPerDay: SIGMAS * ratioSigma * Math.abs(broughtIn(asSet)),
      aWeek: isRead ? { goesOnDkh: afterAWeek(share), putRightDkh: afterAWeek(1) } : undefined,
      leakPptPerWeek: (salinityPractical * Math.max(0, litres - setL) * WEEK_DAYS) / days / volumeL,
      scenario: settable(withUse(withShare(now, pump, share), typedUse)),
    },
  };
}

/** The use that is typed for so much to be taken, where the new dosing has moved pH and saturation. */
function typedFor(taken: (use: number) => number, wanted: number, guess: number): number {
  let [a, atA, b] = [0, taken(0), Math.max(0.05, guess)];
  for (let i = 0; i < MOST_TRIES; i++) {
    const atB = taken(b);
    if (Math.abs(atB - wanted) <= CLOSE_DKH || atB === atA) break;
    const next = Math.max(0, b + ((wanted - atB) * (b - a)) / (atB - atA));
    [a, atA, b] = [b, atB, next];
  }
  return b;
}

const threeFigures = (value: number) => toFigures(value, 3);

/** As fine, and as far, as a plan can be set. */
function settable(scenario: Scenario): Scenario {
  const within = (path: FieldPath, value: number) => {
    const { min, max } = quantityAt(path).quantity;
    return Math.max(min, Math.min(max, threeFigures(value)));
  };
  const { evaporation: air, dosers, corals } = scenario;
  return {
    ...scenario,
    corals: {
      ...corals,
      useDkhPerDay: within(['corals', 'useDkhPerDay'], corals.useDkhPerDay),
    },
    evaporation: {
      ...air,
      litresPerDay: within(['evaporation', 'litresPerDay'], air.litresPerDay),
      surfaceM2: within(['evaporation', 'surfaceM2'], air.surfaceM2),
    },
    dosers: dosers.map((doser) => ({
      ...doser,
      mlPerDay: within(['dosers', 0, 'mlPerDay'], doser.mlPerDay),
      schedule: {
        ...doser.schedule,
        pumpMlPerMin: within(
          ['dosers', 0, 'schedule', 'pumpMlPerMin'],
          doser.schedule.pumpMlPerMin,
        ),
      },
    })),
  };
}

/** What the top-off has yet to replace when the days are over: up to what its level switch allows, L. */
function missingL(trace: Trace, deadBandL: number): number {
  const volumeL = readColumn(trace, 'volume_l');
  return Math.max(0, Math.min(deadBandL, volumeL[0]! - volumeL.at(-1)!));
}

/** How much of the typed evaporation makes the top-off bring so much: nearly a straight line. */
function solvedShare(evenL: (share: number) => number, litres: number, ratio: number): number {
  let [a, atA, b] = [1, evenL(1), Math.max(0.05, ratio)];
  for (let i = 0; i < MOST_TRIES; i++) {
    const atB = evenL(b);
    if (Math.abs(atB - litres) <= CLOSE_SHARE * litres || atB === atA) break;
    const next = Math.max(0.01, b + ((litres - atB) * (b - a)) / (atB - atA));
    [a, atA, b] = [b, atB, next];
  }
  return b;
}
