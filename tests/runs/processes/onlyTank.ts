import type { TankEvent } from '../../../shared/events/event';
import { molarMassGPerMol } from '../../../shared/seawater/atomicMasses';
import { emptyBlock, indexOf, alkalinityEq } from '../../../shared/species/block';
import type { DissolvedId } from '../../../shared/species/species';
import type { SimulationOptions } from '../../../workers/engine/simulation';
import { compile } from '../../../workers/engine/compile';
import { Simulation, usualOptions } from '../../../workers/engine/simulation';
import { merge, quietTank } from '../quietTank';

const NH3_G_PER_MOL = molarMassGPerMol({ N: 1, H: 3 });

type Overrides = NonNullable<Parameters<typeof quietTank>[0]>;

const nothingLives = {
  room: { co2Ppm: 420 },
  start: { carbon: 'airEquilibrium' },
  gas: { kLaPerH: 0, enhancement: 'off' },
  filter: { nitrificationPerH: 0, denitrificationPerDay: 0, oxidationPerH: 0 },
  precipitation: { mode: 'off' },
};

/** A closed tank at 25 °C in which nothing at all happens but what the check switches on. */
export const onlyTank = (
  overrides: Overrides,
  options: SimulationOptions = usualOptions,
  events?: readonly TankEvent[],
) =>
  new Simulation(
    compile(quietTank(merge(nothingLives, overrides) as Overrides), events && { events }),
    options,
  );

/** Ammonium chloride poured in as the tank starts, mg of NH3 in each of its litres. */
export const ammoniumAtStart = (mgPerL: number, volumeL = 300): TankEvent => ({
  timeH: 0,
  apply(_view, plant) {
    const block = emptyBlock();
    block[indexOf.TAN] = block[indexOf.Cl] = ((mgPerL / 1000) * volumeL) / NH3_G_PER_MOL;
    plant.transfer('addition', 'outside', 'tank', block);
  },
});

export const mol = ({ books }: Simulation, id: DissolvedId) => books.tank[indexOf[id]]!;
export const equivalents = ({ books }: Simulation) => alkalinityEq(books.tank);

/** What a stretch of time does to some measures of a tank. */
export function changeOver<Id extends string>(
  tank: Simulation,
  hours: number,
  measures: Record<Id, (tank: Simulation) => number>,
): Record<Id, number> {
  const ids = Object.keys(measures) as Id[];
  const before = ids.map((id) => measures[id](tank));
  tank.advanceTo(hours);
  return Object.fromEntries(ids.map((id, i) => [id, measures[id](tank) - before[i]!])) as Record<
    Id,
    number
  >;
}
