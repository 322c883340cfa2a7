import type { Plant } from '../../shared/devices/device';
import { molarMassGPerMol } from '../../shared/seawater/atomicMasses';
import { indexOf, WATER } from '../../shared/species/block';
import type { Plan } from './compile';
import type { TankView } from './tankView';

/** Ca(OH)2 dissolves as CaO and water (see the note in species.ts). */
const BOUND_WATER_KG_PER_MOL = molarMassGPerMol({ H: 2, O: 1 }) / 1000;

/** What devices and events may do to a tank: nothing here goes round the books. */
export function plantDoor(plan: Plan, view: TankView): Plant {
  const { books, ledger } = plan;
  const rowOf = (reason: string): number => {
    const row = ledger.findIndex(({ id }) => id === reason);
    return row >= 0 ? row : ledger.length - 1;
  };
  const lime = books.poolIndex('reservoirLime');
  const chalk = ledger.some(({ id }) => id === 'topOff')
    ? [
        { index: books.offsetOf('reservoir') + indexOf.Ca, moles: -1 },
        { index: books.poolIndex('airCO2'), moles: -1 },
        { index: books.poolIndex('reservoirChalk'), moles: 1 },
      ]
    : [];
  return {
    setLight: (level, slopePerH) => view.setLight(level, slopePerH),
    setPower: (on) => (view.powered = on),
    setAeration: (kLaPerH) => (view.kLaPerH = kLaPerH),
    waterKg: (vessel) => books.vessel(vessel)[WATER]!,
    contents: (vessel) => books.vessel(vessel),
    transfer: (reason, from, to, block) =>
      books.transfer(rowOf(reason), books.offsetOf(from), books.offsetOf(to), block),
    chalkInReservoir: (mol) => books.react(rowOf('refill'), chalk, mol),
    addLime: (mol) =>
      books.shift(rowOf('refill'), books.offsetOf('outside') + indexOf.Ca, lime, mol),
    dissolveLime(vessel, mol) {
      const [into, outside] = [books.offsetOf(vessel), books.offsetOf('outside')];
      books.shift(rowOf('refill'), lime, into + indexOf.Ca, mol);
      books.shift(rowOf('refill'), outside + WATER, into + WATER, mol * BOUND_WATER_KG_PER_MOL);
    },
    limeMol: () => books.amounts[lime]!,
  };
}
