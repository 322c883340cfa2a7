import type { HandAir } from '../../../shared/faults/handAir';
import { possibleFaults } from '../../../shared/faults/possibleFaults';
import { momentH } from '../../../shared/scenario/clock';
import type { Scenario } from '../../../shared/scenario/schema';
import type { FirstHourBought, ProtectionBought, Reach } from '../../../shared/verdict/bought';
import type { Line } from '../../../shared/verdict/lines';
import { firstFaultH } from '../../../shared/verdict/drillOutcome';
import { inSlices } from '../../engine/inSlices';
import { settling, type Settled } from '../../engine/settle';
import type { SimulationOptions } from '../../engine/simulation';
import { isPowerCut } from '../drill/airEnds';
import { leftAlone } from '../drill/actPlans';
import { howLong } from '../drill/howLong';
import { bare, reachOf } from '../drill/leading';
import { causedLines, courseOf, undisturbed } from '../drill/passing';
import { protectionsOf } from '../drill/protections';
import type { Away } from './away';
import { unattended } from './unattended';

/** A failure of the first night that nobody notices until somebody comes. */
export interface Unnoticed {
  readonly fault: Scenario['faults'][number];
  /** The hour of that night at which it is worst to begin. */
  readonly clockHour: number;
  /** What is passed first, with the ends of what the tank may be, h from when it broke. */
  readonly first: FirstHourBought['first'];
  /** The line of harm that is passed soonest before it is noticed, in whichever of the tanks it may be. */
  readonly harm: { readonly line: Line; readonly reach: Reach } | undefined;
  /** When somebody comes, h from when it broke. */
  readonly noticedH: number;
  /** How long it was followed, h: until it is noticed, or for as long as anything of it is new. */
  readonly followedH: number;
}

/** The failures of a tank that is left alone, the worst first, and what would make that one kinder. */
export interface NobodyLooks {
  readonly failures: readonly Unnoticed[];
  readonly kinder: readonly ProtectionBought[];
}

/** Hours of the night at which something may break. */
const NIGHT_HOURS = [18, 21, 0, 3, 6];
const HARM = ['phHarm', 'alkalinityHarm', 'temperatureHarm', 'oxygenHarm', 'overflow'];
/** Followed no longer: what has not come by then comes slowly enough to be met on a visit. */
const MOST_DAYS = 10;
const MOST_KINDER = 3;

type Left = Pick<Away, 'days' | 'comesDays'>;
type Fault = Scenario['faults'][number];

/** When somebody comes, h from leaving. */
const backH = ({ days, comesDays }: Left): number =>
  24 * (comesDays > 0 ? Math.min(days, comesDays) : days);

/** A failure of the first night after leaving, followed until somebody comes. */
function drillAt(plan: Scenario, fault: Fault, hour: number, away: Left): Scenario {
  const { clockHour } = plan.start;
  const day = hour >= clockHour ? 1 : 2;
  const fromH = momentH({ day, hour }, clockHour);
  const endH = Math.min(Math.max(backH(away), fromH + 1), fromH + MOST_DAYS * 24);
  const hours = isPowerCut(fault) ? fault.endsAfterH : endH - fromH;
  return { ...plan, days: endH / 24, faults: [{ ...fault, day, hour, endsAfterH: hours }] };
}

/** How soon harm comes, then how soon anything does. */
const soonness = ({ harm, first }: Unnoticed): readonly [number, number] => [
  harm?.reach.soonestH ?? Infinity,
  first?.reach.asSetH ?? first?.reach.soonestH ?? Infinity,
];

const compare = (a: Unnoticed, b: Unnoticed): number => {
  const [x, y] = [soonness(a), soonness(b)];
  return x[0] === y[0] ? (x[1] === y[1] ? 0 : x[1] - y[1]) : x[0] - y[0];
};

/**
 * Every failure that the tank can have as it is left, each at the worst hour of the first night and
 * with nobody there until somebody comes. `pause` lets messages in and says whether to go on.
 */
export async function nobodyLooks(
  away: Pick<Away, 'days' | 'comesDays' | 'provided'>,
  handAir: HandAir,
  options: SimulationOptions,
  pause: () => Promise<boolean>,
): Promise<NobodyLooks | undefined> {
  const plan = unattended(away.provided.scenario, away.days);
  const start = await inSlices(settling(plan, options), pause);
  if (!start) return undefined;
  const failures: Unnoticed[] = [];
  for (const fault of possibleFaults(plan)) {
    const pumps = fault.kind.startsWith('doser') ? plan.dosers.map((_, i) => i + 1) : [fault.pump];
    let worst: Unnoticed | undefined;
    for (const pump of pumps) {
      const drill = worstNight(plan, { ...fault, pump }, away, options, start);
      const left = await howLong(drill, handAir, options, pause);
      if (!left) return undefined;
      const found = unnoticed(drill, left, away);
      if (!worst || compare(found, worst) < 0) worst = found;
    }
    if (worst) failures.push(worst);
  }
  failures.sort(compare);
  const [first] = failures;
  if (!first) return { failures, kinder: [] };
  const drill = drillAt(plan, first.fault, first.clockHour, away);
  const kept = await protectionsOf(drill, handAir, options, pause);
  if (!kept) return undefined;
  const helps = kept.protections.filter(({ gain, costs }) => gain !== 'nothing' && !costs);
  return { failures, kinder: helps.slice(0, MOST_KINDER) };
}

function unnoticed(
  drill: Scenario,
  { first, nothing, candidates, fromH }: NonNullable<Awaited<ReturnType<typeof howLong>>>,
  away: Left,
): Unnoticed {
  const [harm] = nothing
    .flatMap((course, i) => causedLines(course, candidates[i]!.undisturbed))
    .filter(({ id }) => HARM.includes(id))
    .toSorted((a, b) => a.firstH! - b.firstH!);
  const [fault] = drill.faults;
  return {
    ...{ fault: fault!, clockHour: fault!.hour, first },
    harm: harm && { line: bare(harm), reach: reachOf(nothing, harm.id, fromH, fromH) },
    noticedH: Math.max(0, backH(away) - fromH),
    followedH: drill.days * 24 - fromH,
  };
}

/** The failure at that hour of the night at which harm, or else anything, comes soonest. */
function worstNight(
  plan: Scenario,
  fault: Fault,
  away: Left,
  options: SimulationOptions,
  start: Settled,
): Scenario {
  const tried = NIGHT_HOURS.map((hour) => {
    const drill = leftAlone(drillAt(plan, fault, hour, away));
    const fromH = firstFaultH(drill);
    const calm = courseOf(undisturbed(drill), options, start, fromH);
    const caused = causedLines(courseOf(drill, options, start, fromH), calm);
    const harm = caused.find(({ id }) => HARM.includes(id))?.firstH ?? Infinity;
    const first = caused[0]?.firstH ?? Infinity;
    return { drill, harmH: harm - fromH, firstH: first - fromH };
  });
  const [worst] = tried.toSorted((a, b) =>
    a.harmH === b.harmH ? (a.firstH === b.firstH ? 0 : a.firstH - b.firstH) : a.harmH - b.harmH,
  );
  return worst!.drill;
}
