import { CO2_G_PER_L } from '../../../shared/events/carbonatedWater';
import { firstHourOf } from '../../../shared/faults/firstHour';
import type { HandAir } from '../../../shared/faults/handAir';
import type { Scenario } from '../../../shared/scenario/schema';
import type { ActBought, BoughtActId, FirstHourBought } from '../../../shared/verdict/bought';
import type { SimulationOptions } from '../../engine/simulation';
import { actH, actPlans, actsFromH, carbonated, type Act } from './actPlans';
import type { Candidate } from './candidates';
import { bought } from './gain';
import { howLong } from './howLong';
import { causedLines, passedH, type Course } from './passing';
import { portionG, portionsUntilBack } from './untilBack';

/** Acts that are for animals or stop the cause: they are done whatever else they bring. */
const AIR: readonly BoughtActId[] = ['batteryAir', 'scoop'];
const STOPS: readonly BoughtActId[] = [
  ...(['unplugTopOff', 'liftHose', 'unplugDoser', 'unplugHeater'] as const),
  ...(['warmSlowly', 'stopAdding', 'openWindows', 'putRight', 'fillByHand'] as const),
];

/** The acts that fit a failure and that the engine can do: those that come first, then the rest. */
export function actsOf(asked: Scenario): {
  stops: BoughtActId[];
  air: BoughtActId[];
  then: BoughtActId[];
} {
  const { first, then } = firstHourOf(asked, false);
  const kinds = new Set(asked.faults.map(({ kind }) => kind));
  const all: BoughtActId[] = [...first, ...then];
  if (kinds.has('doserOff')) all.push('putRight');
  // What was poured in by hand is in: to add nothing more changes nothing that can be run.
  const isDone = (act: BoughtActId) => act === 'stopAdding' && !kinds.has('wrongNewWater');
  const known = all.filter((act) => act in actPlans && !isDone(act));
  return {
    air: kinds.has('powerCut') ? [...AIR] : [],
    stops: known.filter((act) => STOPS.includes(act)),
    then: known.filter((act) => !STOPS.includes(act)),
  };
}

/** Carbonated water for the tank as it is set, by what its water needs: so many portions, so strong. */
function carbonatedAct(
  candidate: Candidate,
  now: Scenario,
  before: Course,
): { act: Act; count: number; gramsEach: number } | undefined {
  const { asked, run } = candidate;
  const fromH = actsFromH(asked);
  const gramsEach = portionG(now, before.run, fromH);
  if (!(gramsEach > 0)) return undefined;
  const count = portionsUntilBack(
    fromH,
    (portions) => run(carbonated(now, asked, gramsEach, portions)).run,
  );
  if (count === 0) return undefined;
  return { act: (plan, own) => carbonated(plan, own, gramsEach, count), count, gramsEach };
}

/**
 * What each act of a failure's first hour buys: the failure is run with it and without it, in the
 * tank as it is set and in those at the ends of what it may be. What stops a cause, and air in a
 * power cut, is set against nothing done; the rest against the first acts done. Without chalk.
 * `pause` lets messages in and says whether the answer is still wanted.
 */
export async function actsBuy(
  drill: Scenario,
  handAir: HandAir,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<FirstHourBought | undefined> {
  const left = await howLong(drill, handAir, options, pause);
  if (!left) return undefined;
  const { asked, candidates, alone, nothing, leading, fromH, first } = left;
  const endH = asked.days * 24;
  const told = (act: BoughtActId): number => actH(act, asked);
  const { stops, air, then } = actsOf(asked);
  const answer = { first, actsFromH: actsFromH(asked) - fromH, followedH: endH - fromH };

  const acts: ActBought[] = [];
  const withheld: BoughtActId[] = [];
  async function tries(
    id: BoughtActId,
    act: Act,
    states: readonly Scenario[],
    before: readonly Course[],
    portions?: ActBought['portions'],
  ): Promise<boolean> {
    if (told(id) >= endH) return true;
    const after = candidates.map((one, i) => one.run(act(states[i]!, one.asked, one.doing)));
    const gained = bought(id, { candidates, before, after, fromH, actH: told(id), leading });
    if (gained === 'worse') withheld.push(id);
    else if (gained) acts.push({ ...gained, portions });
    return pause();
  }

  for (const id of [...air, ...stops]) {
    if (!(await tries(id, actPlans[id]!, alone, nothing))) return undefined;
  }
  const done = [...air.filter((id) => id === 'batteryAir'), ...stops].filter(
    (id) => !withheld.includes(id) && told(id) < endH,
  );
  const stopped = candidates.map(({ asked: own, doing }, i) =>
    done.reduce((plan, id) => actPlans[id]!(plan, own, doing), alone[i]!),
  );
  const before = done.length === 0 ? nothing : candidates.map(({ run }, i) => run(stopped[i]!));
  for (const id of then) {
    if (!(await tries(id, actPlans[id]!, stopped, before))) return undefined;
  }
  const isHigh = passedH(before[0]!, 'phHigh', told('carbonatedWater')) < Infinity;
  const isCaused = causedLines(before[0]!, candidates[0]!.undisturbed).some(
    ({ id }) => id === 'phHigh',
  );
  const water =
    isHigh && isCaused && told('carbonatedWater') < endH
      ? carbonatedAct(candidates[0]!, stopped[0]!, before[0]!)
      : undefined;
  if (water) {
    const portions = { count: water.count, litresEach: water.gramsEach / CO2_G_PER_L };
    if (!(await tries('carbonatedWater', water.act, stopped, before, portions))) return undefined;
  }
  return { ...answer, acts, withheld };
}
