import { wrapped } from '../../../shared/faults/coolingHours';
import { endOf } from '../../../shared/faults/endOf';
import { faultKinds } from '../../../shared/faults/faultKinds';
import { batteryKLaPerH, scoopKLaPerH, type HandAir } from '../../../shared/faults/handAir';
import { calendarOf, momentH } from '../../../shared/scenario/clock';
import { newFault, newResponse } from '../../../shared/scenario/newFault';
import type { FaultId } from '../../../shared/scenario/faults';
import type { Scenario } from '../../../shared/scenario/schema';
import { firstFaultH } from '../../../shared/verdict/drillOutcome';
import type { BoughtActId } from '../../../shared/verdict/bought';
import { isPowerCut } from './airEnds';

type Fault = Scenario['faults'][number];
type Response = Scenario['responses'][number];

/** Aerating harder brings a tank to this at least, 1/h (common practice). */
const AERATED_K_LA_PER_H = 4;
const MOST_K_LA_PER_H = 20;
/** A careful change: a tenth of the water, and once more half a day later (common practice). */
const STEP_PERCENT = 10;
const STEP_EVERY_H = 12;
/** An act follows what happens at a moment by as little as can be set, h. */
const AT_ONCE_H = 0.05;

/** What is done with a failure: the keeper's hands, and how much of the air's way is believed. */
export interface Doing {
  readonly handAir: HandAir;
  /** Part of the reckoned gas exchange of air moved by hand that comes about. */
  readonly airShare: number;
}

const endH = (fault: Fault, { start }: Scenario): number =>
  faultKinds[fault.kind].lasts
    ? endOf(fault, start.clockHour)
    : momentH(fault, start.clockHour) + AT_ONCE_H;

/**
 * When the keeper begins, h of the trial: a power cut is noticed as it comes; anything else when it
 * is set to be noticed, the last of several.
 */
export function actsFromH(scenario: Scenario): number {
  const noticed = scenario.faults.filter((fault) => !isPowerCut(fault));
  if (noticed.length === 0) return firstFaultH(scenario);
  return Math.max(...noticed.map((fault) => endH(fault, scenario)));
}

const clockOf = (timeH: number, { start }: Scenario) => calendarOf(timeH + start.clockHour);

/** Hours from a moment to the end of a trial, as long as can be set. */
const toTheEnd = (timeH: number, { days }: Scenario): number =>
  Math.max(AT_ONCE_H, Math.min(8760, days * 24 - timeH));

/** The failure with nobody doing anything about it; a power cut ends when the mains come back. */
export const leftAlone = (scenario: Scenario): Scenario => ({
  ...scenario,
  responses: [],
  faults: scenario.faults.map((fault) =>
    isPowerCut(fault) || !faultKinds[fault.kind].lasts
      ? fault
      : { ...fault, endsAfterH: toTheEnd(momentH(fault, scenario.start.clockHour), scenario) },
  ),
});

/**
 * What an act makes of a failure: `now` is the failure with whatever was done before it, `asked` as
 * the keeper set it, when it is noticed included.
 */
export type Act = (now: Scenario, asked: Scenario, doing: Doing) => Scenario;

/** The faults of these kinds end when they are noticed, as the keeper has set it. */
const ended =
  (...kinds: FaultId[]): Act =>
  (now, asked) => ({
    ...now,
    faults: now.faults.map((fault, i) => {
      const own = asked.faults[i];
      return own && kinds.includes(own.kind) ? { ...fault, endsAfterH: own.endsAfterH } : fault;
    }),
  });

/** From the moment of the acts on, something is as a fault has it: unplugged, or filled anew. */
function from(now: Scenario, asked: Scenario, kind: FaultId, own: Partial<Fault> = {}): Scenario {
  const timeH = actsFromH(asked);
  const when = { ...clockOf(timeH, now), endsAfterH: toTheEnd(timeH, now) };
  return { ...now, faults: [...now.faults, newFault(kind, { ...when, ...own })] };
}

function responded(
  now: Scenario,
  kind: Response['kind'],
  timeH: number,
  own: Partial<Response>,
): Scenario {
  const when = { ...clockOf(timeH, now), hours: toTheEnd(timeH, now) };
  return { ...now, responses: [...now.responses, newResponse(kind, { ...when, ...own })] };
}

const cutFromH = ({ faults, start }: Scenario): number =>
  Math.max(0, Math.min(...faults.filter(isPowerCut).map((cut) => momentH(cut, start.clockHour))));

/** Air or water moved without mains, from the moment at which the power goes. */
const movedAir =
  (kLaPerH: (scenario: Scenario, air: HandAir) => number): Act =>
  (now, asked, { handAir, airShare }) =>
    responded(now, 'batteryAir', cutFromH(asked), {
      kLaPerH: Math.min(MOST_K_LA_PER_H, airShare * kLaPerH(now, handAir)),
    });

const unplugTopOff: Act = (now, asked) => from(now, asked, 'topOffOff');

/** The top-off runs again, from a reservoir that holds plain water. */
const plainWater: Act = (now, asked) => {
  const kinds = ['topOffOn', 'topOffOff', 'sensorLow', 'siphon', 'strongMix', 'slurry'] as const;
  const faults = now.faults.filter(
    ({ kind }, i) => i < asked.faults.length || kind !== 'topOffOff',
  );
  return from(ended(...kinds)({ ...now, faults }, asked, NOTHING), asked, 'strongMix', {
    times: 0,
  });
};

const NOTHING: Doing = { handAir: { airLPerMin: 0, scoopLPerMin: 0 }, airShare: 0 };

/** The pumps that run away; where something else brings too much, all of them. */
function unplugged({ faults, dosers }: Scenario): readonly number[] {
  const own = faults.filter(({ kind }) => kind === 'doserOn' || kind === 'doserRate');
  return own.length > 0 ? own.map(({ pump }) => pump) : dosers.map((_, i) => i + 1);
}

/** The acts of a first hour that the engine knows how to do; the rest are for hands and eyes. */
export const actPlans: Partial<Readonly<Record<BoughtActId, Act>>> = {
  unplugTopOff,
  liftHose: ended('siphon'),
  unplugDoser: (now, asked) =>
    unplugged(asked).reduce((plan, pump) => from(plan, asked, 'doserOff', { pump }), now),
  unplugHeater: ended('heater'),
  warmSlowly: ended('heater'),
  stopAdding: ended('wrongNewWater'),
  openWindows: ended('roomCo2'),
  putRight: ended('doserOff', 'topOffOff'),
  fillByHand: plainWater,
  plainWater,
  batteryAir: movedAir(batteryKLaPerH),
  scoop: movedAir(scoopKLaPerH),
  keepWarm: (now) => ({
    ...now,
    faults: now.faults.map((fault) => (isPowerCut(fault) ? wrapped(fault, now) : fault)),
  }),
  aerate: (now, asked) =>
    responded(now, 'aerate', actsFromH(asked), {
      kLaPerH: Math.max(now.gas.kLaPerH, AERATED_K_LA_PER_H),
    }),
  changeInSteps: (now, asked) =>
    [0, STEP_EVERY_H].reduce(
      (plan, laterH) =>
        responded(plan, 'extraChange', actsFromH(asked) + laterH, { percent: STEP_PERCENT }),
      now,
    ),
};

/** Carbonated water in portions an hour apart. */
export const carbonated = (
  now: Scenario,
  asked: Scenario,
  co2GramsEach: number,
  portions: number,
): Scenario =>
  portions === 0
    ? now
    : responded(now, 'carbonatedWater', actsFromH(asked), { co2GramsEach, portions });

/** When an act begins, h of the trial. */
export const actH = (act: BoughtActId, asked: Scenario): number =>
  act === 'batteryAir' || act === 'scoop' || act === 'keepWarm'
    ? cutFromH(asked)
    : actsFromH(asked);
