import type { Scenario } from '../../../shared/scenario/schema';
import { usualOptions, type SimulationOptions } from '../../engine/simulation';
import { settle } from '../../engine/settle';
import { isLevel } from '../drill/passing';
import type { PlanQuestion } from '../plan/threePlans';
import { withReference } from '../plan/withReference';
import { covers, type Vessel } from './empties';
import { carries, harmlessOf } from './harmless';
import { margins, mostOf, needsOf, type Most } from './needs';
import { oddsOf, type AwayOdds, type Unsure } from './odds';
import { atHome, leftWith, provided, type Provided, type Provision } from './provided';
import { provisionsOf, type Stock } from './provisions';
import { unattended } from './unattended';

/** The plan's question, for days on which nobody looks. */
export interface AwayQuestion extends Pick<PlanQuestion, 'now'>, Unsure {
  /** Whole days away, 1 or more. */
  readonly days: number;
  /** Somebody comes every so many days; 0: nobody does. */
  readonly visitDays: number;
  /** Where more visits would keep the limits, what becomes of it without them all the same. */
  readonly asAsked?: boolean | undefined;
}

/** What whoever comes fills a vessel up with, and how much at most. */
export interface TopUp {
  /** Which pump's bottle, counted from 0; undefined for the reservoir. */
  readonly pump: number | undefined;
  readonly with: 'plain' | 'mix';
  readonly mostL: number;
}

/** A vessel as it is left. */
export interface Left extends Vessel {
  readonly leaveL: number;
  /** Whether all that it is left with, at once and at the worst hour, does harm. */
  readonly harms: boolean;
}

/** What would do where the limits are not kept for so long, with visits or without. */
export type WayOut =
  /** Fewer days away. */
  | { readonly kind: 'fewerDays'; readonly days: number }
  /** What may stand at once is used up within a day. */
  | { readonly kind: 'moreOften' }
  /** What is outside, or about to be, is put right first. */
  | { readonly kind: 'firstOfAll' };

/** What is to be left before leaving, what comes of it, and how likely. */
export interface Away {
  readonly days: number;
  /** The reservoir first, then each pump's bottle. */
  readonly vessels: readonly Left[];
  /** Shares above what is typed that the litres are for. */
  readonly margins: typeof margins;
  readonly provided: Provided;
  /** Somebody comes every so many days, as was asked or as it takes; 0: nobody does. */
  readonly comesDays: number;
  /** What would become of it as was asked, where more visits keep the limits, or keep them longer. */
  readonly asked: Provided | undefined;
  /** Empty where nobody needs to. */
  readonly topUps: readonly TopUp[];
  readonly odds: AwayOdds;
  /** The days away as a trial; undefined where plain water tops up a mix or a bottle stays empty, which no plan can say. */
  readonly trial: Scenario | undefined;
  readonly wayOut: WayOut | undefined;
}

/** Fewer tell no odds; more make a keeper wait. */
const MEMBERS = 40;

/** Days that the harmless part of every vessel surely lasts; the reservoir's is what it can hold. */
function oftenestVisit(vessels: readonly Vessel[]): number {
  const days = vessels.map(({ pump, hasL, harmless, dailyMostL }) => {
    const most = Math.min(harmless?.litres ?? Infinity, pump === undefined ? hasL : Infinity);
    return dailyMostL > 0 ? Math.floor(most / dailyMostL) : Infinity;
  });
  return Math.min(...days);
}

/**
 * The tank as it runs now, left alone: what may be needed of reservoir and bottles, run by the engine
 * where it is used fastest, and how much of it does no harm all at once; the smallest change that lasts
 * and keeps the limits at every use that is possible, more visits where nothing else does, more than is
 * harmless where not even they do, or else what keeps them longest; and the odds over tanks that this
 * may be.
 */
export function away(question: AwayQuestion, given: SimulationOptions = usualOptions): Away {
  const { days, visitDays, giveOrTakeDkhPerDay, asAsked = false } = question;
  const now = withReference(question.now, given);
  const options = { ...given, near: settle(now, given) };
  const vessels = needsOf(now, days, options).map((need): Vessel => ({
    ...need,
    harmless: harmlessOf(now, need),
  }));
  const home = atHome(now, giveOrTakeDkhPerDay, options);
  const visit = (everyDays: number) => ({ everyDays, needs: mostOf(now, everyDays, options) });
  const lasts = ({ insideDays }: Provided) => insideDays >= days;
  // What leaves the limits while today's mix is still there does so on visits, too.
  let isFull = false;
  const longest = (provisions: Iterable<Provision>): Provided => {
    let best: Provided | undefined;
    for (const one of provisions) {
      if (best && lasts(best)) break;
      const found = provided(one, { days, vessels, home, atLeastDays: best?.insideDays }, options);
      isFull ||= found !== undefined && isTodays(found) && !endsEmpty(found);
      best = found ?? best;
    }
    return best!;
  };
  const isVisited = visitDays > 0 && visitDays < days;
  const stock = { now, vessels, untilVisit: isVisited ? visit(visitDays) : undefined };
  const asked = longest(provisionsOf({ ...stock, mayHarm: 'none' }));
  const oftenest = oftenestVisit(vessels);
  const mayCome = oftenest >= 1 && oftenest < (isVisited ? visitDays : days);
  const oftener = !lasts(asked) && !isFull && mayCome ? visit(oftenest) : undefined;
  const more = oftener && longest(provisionsOf({ ...stock, untilVisit: oftener, mayHarm: 'none' }));
  const isBetter = more !== undefined && more.insideDays > asked.insideDays;
  const harmless = isBetter ? more : asked;
  // Law 2 of advice: what does harm all at once is offered where nothing else lasts, and never else.
  const fuller = lasts(harmless) || isFull ? undefined : inSpite(stock);
  const best = fuller ?? harmless;
  const daily =
    lasts(best) || isFull || asAsked || (isVisited ? visitDays : days) <= 1 ? undefined : visit(1);
  const found = daily && inSpite({ ...stock, untilVisit: daily });
  const fullerDaily = found && found.insideDays > best.insideDays ? found : undefined;
  const isOftener = fullerDaily !== undefined || (isBetter && !fuller && !asAsked);
  const told = fullerDaily ?? fuller ?? (isOftener ? harmless : asked);
  const untilVisit = fullerDaily ? daily : isOftener ? oftener : stock.untilVisit;
  const left = vessels.map((vessel) => leftOf(vessel, told));
  const { tank, limits } = now;
  const isUsedUp =
    (told.empties?.days ?? Infinity) < 1 && tank.alkalinityDkh < limits.alkalinityHighDkh;
  const promisedDays = Math.max(1, told.insideDays);
  return {
    ...{ days, margins, provided: told, vessels: left },
    comesDays: untilVisit?.everyDays ?? 0,
    asked: isOftener ? asked : undefined,
    topUps: topUpsOf(told, left, untilVisit?.needs ?? []),
    trial: trialOf(told, days),
    wayOut: lasts(told)
      ? undefined
      : told.insideDays >= 1
        ? { kind: 'fewerDays', days: told.insideDays }
        : { kind: isUsedUp ? 'moreOften' : 'firstOfAll' },
    odds: oddsOf(
      leftWith(told, promisedDays),
      question,
      told.anyway.map(({ id }) => id),
      MEMBERS,
      options,
    ),
  };

  /** What lasts with bottles, or with the reservoir too, fuller than is harmless. */
  function inSpite(from: Omit<Stock, 'mayHarm'>): Provided | undefined {
    const isFuller = (pump: boolean) =>
      vessels.some(
        (one) =>
          one.harmless?.why === 'harm' &&
          (one.pump !== undefined) === pump &&
          !covers(one.harmless.litres, one),
      );
    let best: Provided | undefined;
    for (const mayHarm of ['bottles', 'all'] as const) {
      if (!isFuller(mayHarm === 'bottles')) continue;
      const found = longest(provisionsOf({ ...from, mayHarm }));
      if (!best || found.insideDays > best.insideDays) best = found;
      if (lasts(best)) break;
    }
    // Where nothing harmless lasts a day, what lasts some days is told, too.
    const isNeeded = best && (lasts(best) || harmless.insideDays === 0);
    return isNeeded && best!.insideDays > harmless.insideDays ? best : undefined;
  }
}

/** Whether the reservoir is left with what is in it today, and nothing thins it. */
const isTodays = ({ kind, scenario }: Provision): boolean =>
  kind === 'filled' || kind === 'mixed' || (kind === 'toppedUp' && !carries(scenario));

/** Whether something stands empty before any level leaves its limits: what moves fast does so in the day before. */
const endsEmpty = ({ empties, breach }: Provided): boolean =>
  empties !== undefined && (!breach || !isLevel(breach) || empties.days * 24 <= breach.firstH!);

function leftOf(vessel: Vessel, { kind, scenario }: Provided): Left {
  const { pump, harmless } = vessel;
  const leaveL = pump === undefined ? scenario.topOff.reservoirL : scenario.dosers[pump]!.stockL;
  const isToday = pump !== undefined || (kind !== 'thinner' && kind !== 'plain');
  return { ...vessel, leaveL, harms: isToday && leaveL > (harmless?.litres ?? Infinity) };
}

function topUpsOf(
  { kind, refillEveryDays, refilledPumps }: Provided,
  left: readonly Left[],
  untilVisit: readonly Most[],
): TopUp[] {
  return left.flatMap(({ pump, leaveL }, i) => {
    const isFilledUp = pump === undefined ? refillEveryDays > 0 : refilledPumps.includes(pump);
    if (!isFilledUp) return [];
    const what = pump === undefined && kind !== 'mixed' ? 'plain' : 'mix';
    return [{ pump, with: what, mostL: Math.min(leaveL, untilVisit[i]?.needL ?? leaveL) }];
  });
}

function trialOf(found: Provided, days: number): Scenario | undefined {
  const { kind, scenario, refillEveryDays, empties } = found;
  if (empties?.pump !== undefined || (kind === 'toppedUp' && carries(scenario))) return undefined;
  return { ...unattended(scenario, days, refillEveryDays), faults: [] };
}
