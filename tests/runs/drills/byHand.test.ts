import { describe, expect, it } from 'vitest';
import { readColumn } from '../../../shared/trace/trace';
import { run } from '../../../workers/engine/run';
import { usualOptions } from '../../../workers/engine/simulation';
import { rangeOf } from '../../../workers/studies/drill/design';
import { dumpAt } from '../../../workers/studies/drill/dump';
import { layersOf } from '../../../workers/studies/drill/layers';
import { carbonatedUntilBack } from '../../../workers/studies/drill/untilBack';
import { usualSpreads } from '../../../shared/verdict/spreads';
import { newFault } from '../../../shared/scenario/newFault';
import { stopTitle } from '../../../src/say/drill/stopTitle';
import { quietTank } from '../quietTank';

const tank = (topOff: object) =>
  quietTank({
    outflows: { spareL: 500 },
    topOff: { reservoirL: 60, refillEveryDays: 0, pumpLPerH: 3, deadBandL: 0.5, ...topOff },
  });

describe('a full dump, by arithmetic', () => {
  it('goes through each protection with the litres that it lets pass in a day and a half', () => {
    const layers = layersOf(tank({ additive: 'calciumHydroxide', gramsPerL: 0.2 }), 0);
    const litres = (id: string) => {
      const { stop, litres } = layers.find((layer) => layer.stop.id === id)!;
      return [litres.toFixed(2), stopTitle(stop)];
    };
    expect(litres('nothing')).toEqual(['60.00', 'nothing stops it']);
    // 10 minutes of each of 36 hours at 3 L/h.
    expect(litres('runLimit')).toEqual(['18.00', 'a run-time limit of 10 min an hour']);
    // 2 L above the level, and nothing evaporates.
    expect(litres('secondSwitch')).toEqual(['2.00', 'a second switch 2 L above the level']);
    expect(litres('halfReservoir')).toEqual(['30.00', 'half the reservoir']);
    // 1.5 L/h for 36 h.
    expect(litres('halfPump')).toEqual(['54.00', 'half the pump']);
  });

  it('is followed until the last drop, however slow the run-time limit makes it', () => {
    const dump = dumpAt(
      tank({ reservoirL: 20, pumpLPerH: 10, runLimitMinPerH: 15 }),
      6,
      'runLimitMinPerH',
    );
    // 2.5 L an hour: 8 h, and a little.
    expect(Math.round(dump.days * 24)).toBe(9);
    const litres = readColumn(run(dump).trace, 'topoff_l');
    expect([1, 4, 7, 8].map((hour) => litres[hour]!.toFixed(2))).toEqual([
      '2.50',
      '10.00',
      '17.50',
      '20.00',
    ]);
    expect(Math.round(dumpAt(tank({ reservoirL: 20, pumpLPerH: 10 }), 6).days * 24)).toBe(3);
  });

  it('is searched up to a reservoir of half the tank', () => {
    const question = {
      ...{ scenario: tank({}), lines: ['phHarm'], share: 1, members: 1, seed: 1, hour: 0 },
      spreads: usualSpreads,
    };
    expect(rangeOf({ ...question, lever: 'reservoirL' })).toEqual([0.3, 150]);
    expect(rangeOf({ ...question, lever: 'pumpLPerH' })[1]).toBe(100);
  });
});

it('carbonated water comes in quarters of what closed water needs, until pH is back', () => {
  // 3 % limewater in 300 L that stood at 8 dKH and 420 ppm: +3.42 dKH, 1.22 meq/L.
  const scenario = quietTank({
    ...{ days: 1, start: { carbon: 'airEquilibrium' }, room: { co2Ppm: 420 }, gas: { kLaPerH: 0 } },
    // Back to where it stood: pH 8.244.
    limits: { phHighNbs: 8.244 },
    outflows: { spareL: 100 },
    topOff: {
      ...{ reservoirL: 9, refillEveryDays: 0, pumpLPerH: 90, additive: 'calciumHydroxide' },
      ...{ gramsPerL: 1.504, lossPercentPerDay: 0 },
    },
    faults: [newFault('topOffOn', { day: 1, hour: 0, endsAfterH: 1 })],
  });
  const [answer] = carbonatedUntilBack(scenario, usualOptions).scenario.responses;
  // 0.896 mol of CO2 an equivalent brings it back (PyCO2SYS, closed, S 35, 25 °C): 1.504 g/L of
  // 74.093 g/mol, two equivalents a mole, in 9 L.
  const gramsOfCo2 = 0.896 * ((9 * 1.504 * 2) / 74.093) * 44.009;
  expect(answer!.co2GramsEach / (gramsOfCo2 / 4)).toBeCloseTo(1, 1);
  expect(Math.abs(answer!.co2GramsEach / (gramsOfCo2 / 4) - 1)).toBeLessThan(0.03);
});
