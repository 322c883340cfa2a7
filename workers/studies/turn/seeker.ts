import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { lineOf, type LineResult } from '../../../shared/verdict/lineResult';
import { run, stateAfter } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import type { TankState } from '../../engine/tankState';
import { asItGoesOn } from '../forecast/goingOn';
import { dumpHolds, fullestReservoirL } from '../plan/fullDump';
import { heldDkh, PLAN_DAYS } from '../plan/holding';
import type { PlanQuestion } from '../plan/threePlans';
import { standingAt } from '../plan/standingAt';
import { usesWithin, withUse } from '../plan/useEnds';
import { withReference } from '../plan/withReference';
import { waysThere, type Way } from './gettingThere';
import { holdingValue, type Holding } from './holdingValue';
import { handLevers, otherHands } from './hand';
import type { Lever } from './lever';
import { promised, type Promised, type Refusal } from './promised';
import { dayMeans } from '../dayMeans';
import { replayed, widestDay, type Replay, type Stretch } from './replay';

/** A lever where it holds the target. */
export interface Held {
  readonly lever: Lever;
  readonly to: number;
  readonly dkhPerUnit: number;
}

/** How well the use is known, and how fast the water may be moved. */
export interface Allowed {
  readonly giveOrTakeDkhPerDay: number;
  readonly mostDkhPerDay: number;
}

/** A lever tried: the way there, and what became of it at the use and at either end of its doubt. */
export type Attempt =
  | { readonly kind: 'refused'; readonly refusal: Refusal }
  | {
      readonly kind: 'turn';
      readonly held: Held;
      readonly way: Way;
      readonly replays: readonly Replay[];
      readonly promise: Promised;
      readonly settledDays: number;
      readonly allowedDkh: number;
      /** Where it is one more channel: why nothing that runs is turned instead. */
      readonly whyNotOwn?: Refusal;
    };

/** From the third day on a tank is at rest again; by then each weekly change has come once. */
const REST_DAYS = 11;
/** Longer than any way to the target and what is looked at after it. */
const LONGEST_DAYS = 80;
/** Off the target a day swings a little more. */
const SWING = 1.05;
/** At the target: nearer than a test can tell, or else as near as one can. */
const NEAR_DKH = [0.1, 0.3] as const;

/** One tank and one target: the water that every try begins with, and what was found of each lever. */
export class Seeker {
  readonly now: Scenario;
  /** What is poured in by hand: it goes on in `now`. */
  readonly hands: { readonly own: readonly Lever[]; readonly otherwise: readonly Lever[] };
  private readonly standsAt;
  private readonly found = new Map<Lever, Holding>();
  private atTarget: TankState | undefined;
  private readonly goesOn = new Map<number, Replay>();

  /** What new pumps are called. */
  readonly pairNames: PlanQuestion['pairNames'];
  /** Whether the bottles of a pair are turned each by itself. */
  readonly unlinked: boolean;

  constructor(
    question: Pick<PlanQuestion, 'now' | 'pairNames' | 'unlinked' | 'byHand'>,
    private readonly targetDkh: number,
    private readonly options: SimulationOptions,
  ) {
    this.pairNames = question.pairNames;
    this.unlinked = question.unlinked ?? false;
    const now = withReference(question.now, options);
    const { byHand } = question;
    const goesOn = asItGoesOn({ now, byHand }, LONGEST_DAYS);
    this.now = { ...goesOn, days: PLAN_DAYS, faults: [], responses: [] };
    const longest = { ...now, days: LONGEST_DAYS };
    this.hands = {
      own: byHand ? handLevers(longest, byHand) : [],
      otherwise: byHand ? otherHands(longest, byHand) : [],
    };
    this.standsAt = standingAt(this.now, options);
  }

  /** The same water at the target. */
  private get standing(): TankState {
    const tank = { ...this.now.tank, alkalinityDkh: this.targetDkh };
    this.atTarget ??= stateAfter({ ...this.now, days: 0, tank }, this.options);
    return this.atTarget;
  }

  /** How calcium passes the keeper's lowest while nothing is turned; undefined where it does not. */
  get calciumRunsOut(): LineResult | undefined {
    const line = lineOf(this.today().lines, 'calciumLow');
    return line.firstH === undefined ? undefined : line;
  }

  /** The tank as it goes on if nothing is turned, at the use itself or at another. */
  private today(use = this.now.corals.useDkhPerDay): Replay {
    const goesOn =
      this.goesOn.get(use) ?? this.replay([{ scenario: this.now, untilDay: PLAN_DAYS }], use);
    this.goesOn.set(use, goesOn);
    return goesOn;
  }

  /** The use itself, and at either end of its doubt. */
  uses(giveOrTakeDkhPerDay: number): readonly number[] {
    return usesWithin(this.now.corals.useDkhPerDay, giveOrTakeDkhPerDay);
  }

  /** From the newest water through all stretches, at another use than the fitted. */
  replay(stretches: readonly Stretch[], use: number): Replay {
    const scenarios = stretches.map((one) => ({ ...one, scenario: withUse(one.scenario, use) }));
    return replayed(scenarios, this.standsAt(use), this.options);
  }

  /** Runs from the newest water, as it was left by the plan in force. */
  runPlan = (scenario: Scenario) =>
    run(scenario, this.options, this.standsAt(this.now.corals.useDkhPerDay));

  /** How far above the target a setting holds water that stands there already. */
  restsOffDkh(lever: Lever, value: number, use: number): number {
    const scenario = withUse(lever.set(this.now, value), use);
    return heldDkh(run(scenario, this.options, this.standing)) - this.targetDkh;
  }

  holding(lever: Lever): Holding {
    const known = this.found.get(lever);
    if (known) return known;
    const [use] = this.uses(0);
    const found = holdingValue(lever, this.targetDkh, (value) =>
      this.restsOffDkh(lever, value, use!),
    );
    this.found.set(lever, found);
    return found;
  }

  attempt(held: Held, { giveOrTakeDkhPerDay, mostDkhPerDay }: Allowed): Attempt {
    const { targetDkh } = this;
    const { lever, to } = held;
    const limits = { ...this.now.limits, alkalinityChangeDkhPerDay: mostDkhPerDay };
    const scenario = { ...lever.set(this.now, to), limits };
    const uses = this.uses(giveOrTakeDkhPerDay);
    // The day's own swing is nothing that a turn brings or could keep away.
    const perUse = uses.map((use) => Math.max(mostDkhPerDay, SWING * this.swingDkh(scenario, use)));
    const allowedDkh = Math.min(...perUse);
    const ways = waysThere({
      ...{ lever, holding: to, held: scenario, targetDkh, days: PLAN_DAYS, allowedDkh },
      replay: (stretches) => this.replay(stretches, uses[0]!),
      runPlan: this.runPlan,
      moveDkh: (stretches, use) =>
        this.replay(stretches, uses[use === 'lowest' ? 1 : 2]!).largestMoveDkh,
    });
    // What moves too fast as the tank runs today may not move any faster.
    const todays = uses.map((use) => this.today(use));
    const mayMoveDkh = perUse.map((dkh, i) => Math.max(dkh, firstMoveDkh(todays[i]!)));
    let refusal: Refusal | undefined;
    for (const way of ways) {
      const replays = uses.map((use) => this.replay(way.stretches, use));
      const settledDays = settledOn(replays[0]!, targetDkh);
      const days = way.stretches.at(-1)!.untilDay;
      const judge = { ...{ todays, targetDkh, settledDays, days }, mayMoveDkh };
      const promise = promised(replays, judge);
      refusal ??= promise.refusal;
      if (promise.refusal) continue;
      const full = { ...scenario, tank: { ...scenario.tank, alkalinityDkh: targetDkh } };
      if (lever.kind === 'mix' && to > lever.from && !dumpHolds(full)) {
        return { kind: 'refused', refusal: { kind: 'dump', fullestL: fullestReservoirL(full) } };
      }
      return {
        kind: 'turn',
        held,
        way,
        replays,
        promise,
        settledDays: settledDays!,
        allowedDkh: mayMoveDkh[0]!,
      };
    }
    return { kind: 'refused', refusal: refusal! };
  }

  /** What a day moves by itself once the water stands at the target, dKH. */
  private swingDkh(scenario: Scenario, use: number): number {
    const { trace } = run(
      { ...withUse(scenario, use), days: REST_DAYS },
      this.options,
      this.standing,
    );
    return widestDay(readColumn(trace, 'alkalinity_dkh'), 3 * 24, REST_DAYS * 24);
  }
}

/** Largest move of the first two days, dKH. */
const firstMoveDkh = ({ dkh }: Replay): number => widestDay(dkh, 0, 48);

/** The first day whose mean stands at the target. */
function settledOn({ dkh }: Replay, targetDkh: number): number | undefined {
  const means = dayMeans(dkh);
  for (const near of NEAR_DKH) {
    const day = means.findIndex((mean) => Math.abs(mean - targetDkh) <= near);
    if (day >= 0) return day;
  }
  return undefined;
}
