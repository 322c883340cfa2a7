import type { Scenario } from '../../../shared/scenario/schema';
import { lineOf } from '../../../shared/verdict/lineResult';
import { run } from '../../engine/run';
import type { SimulationOptions } from '../../engine/simulation';
import { asItGoesOn } from '../forecast/goingOn';
import { atRest } from './atRest';
import type { Today } from './breaches';
import { drifts } from './drifts';
import { PLAN_DAYS } from './holding';
import type { PlanQuestion } from './threePlans';

/** So many days show how far the tank is outside as it runs today. */
const TODAY_DAYS = 2;

/**
 * How far each line is passed as the tank runs today. What is used up or piled up over weeks and is outside
 * already is held against the weeks that a plan is made for, at the highest use that is possible.
 */
export function todayOf(
  now: Scenario,
  { giveOrTakeDkhPerDay, byHand }: PlanQuestion,
  options: SimulationOptions,
): Today {
  const { lines } = run({ ...now, days: TODAY_DAYS }, options);
  const isOut = (one: Today[number]) => one.firstH !== undefined && drifts.includes(one.quantity);
  if (!lines.some(isOut)) return lines;
  const goesOn = { ...asItGoesOn({ now, byHand }, PLAN_DAYS), days: PLAN_DAYS };
  const most = now.corals.useDkhPerDay + giveOrTakeDkhPerDay;
  const later = run(atRest(now, options)(goesOn, most), options).lines;
  return lines.map((line) => (isOut(line) ? lineOf(later, line.id) : line));
}
