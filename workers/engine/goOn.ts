import type { Vessel } from '../../shared/devices/device';
import { INSTANT_H } from '../../shared/scenario/clock';
import { noFactors, type Factors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { indexOf, WATER } from '../../shared/species/block';
import { compile, type CompileOptions, type Plan } from './compile';
import type { Books } from './books';
import type { TankState } from './tankState';

/** What a tank is taken over with; what was watched of it is another matter. */
type LeftBehind = Omit<TankState, 'recent' | 'closure'>;

/** A plan that takes over a tank, and where. */
export interface GoneOn {
  readonly plan: Plan;
  readonly from: TankState;
}

/**
 * A scenario made ready to take over a tank as another run left it. Water, pools, ledger, the phase
 * of every switch and the law of growth go on; what the scenario says of the first water is passed
 * over. What stands in the reservoir and the bottles is used up first; where another mix is meant,
 * they are emptied and filled with it. Nothing comes or goes but through the books.
 * Throws a RangeError when the scenario's days end before the state's moment.
 */
export function goOn(scenario: Scenario, from: TankState, factors?: Factors): GoneOn {
  if (scenario.days * 24 < from.timeH - INSTANT_H) throw new RangeError(endsBefore(scenario, from));
  return { plan: takenOver(scenario, from, { factors: factors ?? noFactors }), from };
}

/** The plan alone, with what was done to the tank where that is known. */
export function takenOver(
  scenario: Scenario,
  from: LeftBehind,
  done: Pick<CompileOptions, 'factors' | 'events'>,
): Plan {
  const plan = compile(scenario, { ...from.start, ...done, beside: from });
  takeOver(plan.books, from);
  from.ledger.forEach(({ row: { id }, eq }) => {
    plan.books.ledgerEq[plan.ledger.findIndex((row) => row.id === id)] = eq;
  });
  const meant = plan.devices.flatMap(({ vessels }) => vessels);
  const anew = meant.filter((vessel) => !goesOn(vessel, from));
  for (const vessel of anew) fillAnew(plan, vessel);
  for (const vessel of anew) layAnew(plan, vessel);
  for (const vessel of meant) pourSurplus(plan, vessel);
  for (const { id, memory } of plan.devices) {
    memory.forEach((part, i) => Object.assign(part, from.memories[id]?.[i]));
  }
  const events = plan.events.filter(({ timeH }) => timeH > from.timeH + INSTANT_H);
  return { ...plan, events };
}

const endsBefore = ({ days }: Scenario, { timeH }: TankState): string =>
  `days: got ${days}; the tank goes on from day ${timeH / 24}: expected no fewer`;

/** Every account as it stood; a vessel that is new stands empty. */
function takeOver(books: Books, { vessels, pools }: LeftBehind): void {
  books.amounts.fill(0);
  for (const { id, amounts, lost } of vessels) {
    books.amounts.set(amounts, books.offsetOf(id));
    books.lost.set(lost, books.offsetOf(id));
  }
  books.amounts.set(pools.amounts, books.poolOffset);
  books.lost.set(pools.lost, books.poolOffset);
}

/** Whether what stands in a vessel was mixed as the scenario means it to be. */
const goesOn = (vessel: Vessel, { scenario, vessels }: LeftBehind): boolean =>
  vessels.some(({ id }) => id === vessel.id) && vessel.isMixedAs(scenario);

function fillAnew({ books, refillRow }: Plan, { id, contents }: Vessel): void {
  const [vessel, outside] = [books.offsetOf(id), books.offsetOf('outside')];
  books.transfer(refillRow, vessel, outside, books.vessel(id).slice());
  books.transfer(refillRow, outside, vessel, contents);
}

/** What lies on a vessel's floor goes with its water. */
function layAnew({ books, refillRow }: Plan, { undissolved }: Vessel): void {
  if (!undissolved) return;
  const floor = books.poolIndex(undissolved.pool);
  const outside = books.offsetOf('outside') + indexOf[undissolved.species];
  books.shift(refillRow, outside, floor, undissolved.mol - books.amounts[floor]!);
}

/** A smaller vessel holds less. */
function pourSurplus({ books, refillRow }: Plan, { id, holdsKg }: Vessel): void {
  if (holdsKg === undefined) return;
  const held = books.vessel(id).slice();
  const share = 1 - holdsKg / held[WATER]!;
  // What dissolves in lime's place is more water than was filled in, by parts in ten thousand.
  if (share < 0.01) return;
  books.transfer(refillRow, books.offsetOf(id), books.offsetOf('outside'), held, share);
}
