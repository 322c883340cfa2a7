import { describe, expect, it } from 'vitest';
import { newFault } from '../../shared/scenario/newFault';
import { readColumn } from '../../shared/trace/trace';
import { run } from '../../workers/engine/run';
import { quietTank } from './quietTank';

/** Litres brought by each hour. */
const broughtL = (scenario: Parameters<typeof run>[0]) =>
  readColumn(run(scenario).trace, 'topoff_l');

describe('a top-off, by arithmetic', () => {
  it('siphons on only once its pump has filled the hose', () => {
    const litres = broughtL(
      quietTank({
        evaporation: { litresPerDay: 4 },
        topOff: {
          ...{ reservoirL: 40, refillEveryDays: 0, deadBandL: 0.3, pumpLPerH: 3 },
          siphonLPerH: 2,
        },
      }),
    );
    // A sixth of a litre an hour leaves: the band of 0.3 L is gone after 1.8 h.
    expect(Array.from(litres.subarray(0, 2))).toEqual([0, 0]);
    // Then 3 L/h until it is full again, 0.3 ÷ (3 − 1/6) = 0.106 h, and 2 L/h from there on.
    const filledH = 0.3 / (3 - 1 / 6);
    expect(litres[4]).toBeCloseTo(3 * filledH + 2 * (4 - 1.8 - filledH), 2);
  });

  it('is held to its minutes a day, and may go on after midnight', () => {
    const litres = broughtL(
      quietTank({
        days: 2,
        start: { clockHour: 20 },
        outflows: { spareL: 100 },
        topOff: {
          ...{ reservoirL: 60, refillEveryDays: 0, pumpLPerH: 12, runLimitMinPerDay: 20 },
        },
        faults: [newFault('topOffOn', { day: 1, hour: 20, endsAfterH: 40, runLimit: 'works' })],
      }),
    );
    // 20 min at 12 L/h are 4 L; midnight is 4 h away, the next one 28 h.
    expect([4, 6, 27, 30].map((hour) => litres[hour]!.toFixed(3))).toEqual([
      '4.000',
      '8.000',
      '8.000',
      '12.000',
    ]);
  });
});

it('lights that are off all day, or never, are so at every hour', () => {
  const lightOf = (hours: number) =>
    new Set(readColumn(run(quietTank({ lights: { hours, rampHours: 1 } })).trace, 'light'));
  expect(lightOf(0)).toEqual(new Set([0]));
  expect(Math.max(...lightOf(12))).toBeCloseTo(12 / 11, 9);
});
