import { same } from './same';
import { withoutEdition, type Tank } from './tanks';

/** The tanks of a file beside those that are here: the same stay single, others get a free name. */
export function besides(here: readonly Tank[], file: readonly Tank[]): Tank[] {
  const all = [...here];
  for (const tank of file) {
    if (all.some((one) => same(withoutEdition(one), withoutEdition(tank)))) continue;
    let id = tank.id;
    for (let n = 2; all.some((one) => one.id === id); n++) id = `${tank.id}-${n}`;
    all.push({ ...withoutEdition(tank), id });
  }
  return all.slice(here.length);
}
