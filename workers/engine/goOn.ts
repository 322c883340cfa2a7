import type { VesselId } from '../../shared/devices/device';
import { firstFill } from '../../shared/devices/reservoirMix';
import { INSTANT_H } from '../../shared/scenario/clock';
import { noFactors, type Factors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { densityKgPerM3 } from '../../shared/seawater/density';
import { indexOf, WATER, type Block } from '../../shared/species/block';
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
  const meant = new Map(
    plan.devices.flatMap(({ vessels }) => vessels.map(({ id, contents }) => [id, contents])),
  );
  takeOver(plan.books, from);
  from.ledger.forEach(({ row: { id }, eq }) => {
    plan.books.ledgerEq[plan.ledger.findIndex((row) => row.id === id)] = eq;
  });
  const refill = plan.ledger.findIndex(({ id }) => id === 'refill');
  for (const [id, contents] of meant) {
    if (!goesOn(id, scenario, from)) fillAnew(plan.books, refill, id, contents);
  }
  if (meant.has('reservoir')) {
    if (!goesOn('reservoir', scenario, from)) limeAnew(plan.books, refill, scenario);
    pourSurplus(plan.books, refill, scenario);
  }
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
function goesOn(
  id: VesselId,
  { topOff, dosers }: Scenario,
  { scenario: before, vessels }: LeftBehind,
) {
  if (!vessels.some((vessel) => vessel.id === id)) return false;
  if (id === 'reservoir') {
    const { additive, gramsPerL } = before.topOff;
    return topOff.additive === additive && (additive === 'none' || topOff.gramsPerL === gramsPerL);
  }
  const i = Number(id.slice('stock'.length)) - 1;
  return JSON.stringify(dosers[i]?.recipe) === JSON.stringify(before.dosers[i]?.recipe);
}

function fillAnew(books: Books, row: number, id: VesselId, contents: Block): void {
  const [vessel, outside] = [books.offsetOf(id), books.offsetOf('outside')];
  books.transfer(row, vessel, outside, books.vessel(id).slice());
  books.transfer(row, outside, vessel, contents);
}

/** What lies on the reservoir's floor goes with its water. */
function limeAnew(books: Books, row: number, scenario: Scenario): void {
  const lime = books.poolIndex('reservoirLime');
  const more = firstFill(scenario).solidLimeMol - books.amounts[lime]!;
  books.shift(row, books.offsetOf('outside') + indexOf.Ca, lime, more);
}

/** A smaller reservoir holds less. */
function pourSurplus(books: Books, row: number, { topOff, tank }: Scenario): void {
  const fullKg = (topOff.reservoirL * densityKgPerM3(tank.tempC, 0)) / 1000;
  const held = books.vessel('reservoir').slice();
  const share = 1 - fullKg / held[WATER]!;
  // What dissolves in lime's place is more water than was filled in, by parts in ten thousand.
  if (share < 0.01) return;
  books.transfer(row, books.offsetOf('reservoir'), books.offsetOf('outside'), held, share);
}
