import { say } from '../words/ledger';
import { densityKgPerM3 } from '../seawater/density';
import { passive, type DeviceKind, type Pipe } from './device';

/** What spills before the flow stops again, and how fast: a rim lets water go at once. */
const SPILL_SHARE = 0.003;
const LEAST_SPILL_L = 0.4;
const RIM_L_PER_H = 2000;

/** A sump that is full to the rim lets the rest onto the floor, with its salt. */
export const overflow: DeviceKind = {
  id: 'overflow',
  build({ tank, outflows }) {
    const rim = tank.volumeL + outflows.spareL;
    const spillL = Math.max(LEAST_SPILL_L, tank.volumeL * SPILL_SHARE);
    const kgPerL = densityKgPerM3(tank.tempC, tank.salinityPractical) / 1000;
    const pipe: Pipe = {
      id: 'overflow',
      label: say.overflow,
      role: 'spill',
      from: 'tank',
      to: 'outside',
      kgPerH: 0,
    };
    const memory = { spilling: false };
    const watch = (volumeL: number) => (memory.spilling ? volumeL - (rim - spillL) : rim - volumeL);
    return [
      {
        ...passive,
        id: 'overflow',
        pipes: [pipe],
        memory: [memory],
        watch: (view) => watch(view.volumeL),
        watchPerL: () => (memory.spilling ? 1 : -1),
        act(view) {
          if (watch(view.volumeL) <= 0) memory.spilling = !memory.spilling;
          pipe.kgPerH = memory.spilling ? RIM_L_PER_H * kgPerL : 0;
        },
      },
    ];
  },
};
