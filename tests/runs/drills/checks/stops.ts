import { newFault } from '../../../../shared/scenario/newFault';
import { compile } from '../../../../workers/engine/compile';
import type { Scenario } from '../../../../shared/scenario/schema';
import { CrossingWatch } from '../../../../workers/engine/crossings';
import { Simulation } from '../../../../workers/engine/simulation';
import type { Check } from '../../../reference/check';
import { hoursToChange, switchMoment } from '../../checks/switches';
import { quietTank } from '../../quietTank';

const volumeL = 300;
const pumpLPerH = 12;

type Fault = Parameters<typeof newFault>[1];

const stuck = (fault: Fault, topOff: object, outflows: object = {}): Scenario =>
  quietTank({
    days: 3,
    start: { carbon: 'airEquilibrium' },
    gas: { kLaPerH: 0 },
    tank: { volumeL },
    outflows: { spareL: 100, ...outflows },
    topOff: { reservoirL: 60, refillEveryDays: 0, pumpLPerH, deadBandL: 0.5, ...topOff },
    faults: [newFault('topOffOn', { day: 1, hour: 0, endsAfterH: 48, ...fault })],
  });

/** Moment at which the system holds so much more, found by the watch of lines. */
function passesH(scenario: Scenario, litres: number): number {
  const simulation = new Simulation(compile(scenario));
  const watch = new CrossingWatch(simulation, [
    { id: 'volume', quantity: 'volume', trouble: 'above', limit: volumeL + litres },
  ]);
  simulation.onStep = () => watch.check();
  simulation.advanceTo(24);
  return watch.found[0]?.timeH ?? NaN;
}

const plain = stuck({}, {});
const secondSwitch = stuck({ secondSwitch: 'works' }, { secondSwitchL: 3 });
const rim = stuck({}, {}, { spareL: 20 });
const limited = stuck({ runLimit: 'works' }, { runLimitMinPerH: 7 });

/** What stops a stuck pump, and when the water stands where arithmetic says. */
export function stopsChecks(): Check[] {
  const moments: [quantity: string, gotH: number, expectedH: number, toleranceS: number][] = [
    [
      'a stuck pump has added 1 % of the volume',
      passesH(plain, volumeL / 100),
      hoursToChange(plain, volumeL / 100, pumpLPerH),
      60,
    ],
    [
      'the second switch cuts the pump',
      switchMoment(secondSwitch, 'topOff', false, hoursToChange(secondSwitch, 3, pumpLPerH)),
      hoursToChange(secondSwitch, 3, pumpLPerH),
      1,
    ],
    [
      'the sump runs over',
      switchMoment(rim, 'overflow', true, hoursToChange(rim, 20, pumpLPerH)),
      hoursToChange(rim, 20, pumpLPerH),
      1,
    ],
    [
      'the run-time limit stops the pump',
      switchMoment(limited, 'topOff', false, 7 / 60),
      7 / 60,
      1,
    ],
    ['the next hour frees it again', switchMoment(limited, 'topOff', true, 1), 1, 1],
    ['the reservoir runs dry', switchMoment(plain, 'topOff', false, 5), 60 / pumpLPerH, 1],
  ];
  return moments.map(([quantity, gotH, expectedH, tolerance]) => ({
    id: `stops/${quantity.replaceAll(' ', '-')}`,
    quantity,
    source: 'arithmetic with the mass of water and EOS-80',
    howVerified: 'computed',
    ...{ expected: expectedH * 3600, got: gotH * 3600, tolerance, unit: 's' },
  }));
}
