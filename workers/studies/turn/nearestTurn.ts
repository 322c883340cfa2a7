import type { SimulationOptions } from '../../engine/simulation';
import { allLevers, findTurn, type Levers } from './findTurn';
import type { Refusal } from './promised';
import { Seeker, type Allowed } from './seeker';
import type { NearestTurn } from './turned';
import { knownBetter, targetsAside, twoDigits } from '../plan/changeTried';
import type { PlanQuestion } from '../plan/threePlans';

/** Parts of what the use is known to, and of the way to the middle of the band, that are tried. */
const SURER = [0.4];
const ASIDE = [0.5, 1];
const WIDER = [1.4, 2];

/** One change that would make a turn of it: knowing the use better, another target, a wider limit. */
export function nearestTurn(
  question: PlanQuestion,
  seeker: Seeker,
  levers: Levers,
  refusal: Refusal,
  options: SimulationOptions,
): NearestTurn | undefined {
  if (seeker.calciumRunsOut) return { kind: 'calcium' };
  const { targetDkh } = question;
  const allowed = allowedIn(question);
  const does = (change: Partial<Allowed>) =>
    findTurn(seeker, levers, targetDkh, { ...allowed, ...change }).kind === 'turn';
  if (refusal.kind === 'dump' || refusal.kind === 'outOfReach') return aside(question, options);
  const isLevel = refusal.kind === 'breach' && refusal.breach.quantity === 'alkalinity';
  const other = isLevel ? aside(question, options) : undefined;
  if (other) return other;
  const known = knownBetter(allowed.giveOrTakeDkhPerDay, SURER, (giveOrTakeDkhPerDay) =>
    does({ giveOrTakeDkhPerDay }),
  );
  if (known !== undefined) return { kind: 'knownUse', giveOrTakeDkhPerDay: known };
  const isTooFast = refusal.kind === 'breach' && refusal.breach.id === 'alkalinityChange';
  if (isLevel) return undefined;
  if (!isTooFast) return aside(question, options);
  const wider = WIDER.map((times) => twoDigits(times * allowed.mostDkhPerDay));
  const dkhPerDay = wider.find((mostDkhPerDay) => does({ mostDkhPerDay }));
  return dkhPerDay === undefined ? undefined : { kind: 'limit', dkhPerDay };
}

export const allowedIn = ({ now, giveOrTakeDkhPerDay }: PlanQuestion): Allowed => ({
  ...{ giveOrTakeDkhPerDay, mostDkhPerDay: now.limits.alkalinityChangeDkhPerDay },
});

function turns(question: PlanQuestion, options: SimulationOptions): boolean {
  const seeker = new Seeker(question, question.targetDkh, options);
  const { targetDkh } = question;
  return findTurn(seeker, allLevers(seeker), targetDkh, allowedIn(question)).kind === 'turn';
}

function aside(question: PlanQuestion, options: SimulationOptions): NearestTurn | undefined {
  const { targetDkh, now } = question;
  const dkh = targetsAside(targetDkh, now.limits, ASIDE).find(
    (aim) => aim !== targetDkh && turns({ ...question, targetDkh: aim }, options),
  );
  return dkh === undefined ? undefined : { kind: 'target', dkh };
}
