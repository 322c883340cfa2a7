import { meqPerLFromDkh, limewaterGPerLFromMeqPerL } from '../../../shared/seawater';
import { readColumn } from '../../../shared/trace/trace';
import { run, type Run } from '../../../workers/engine/run';
import type { Check } from '../../reference/check';
import { quietTank } from '../quietTank';

const volumeL = 300;
const useDkhPerDay = 1.1;
const evaporationLPerDay = 6;
const days = 10;

/** 1.1 dKH a day used, day and night alike, and brought back by limewater, drop by drop. */
export function limewaterRun(kLaPerH: number): Run {
  const meqPerDay = meqPerLFromDkh(useDkhPerDay) * volumeL;
  return run(
    quietTank({
      days,
      tank: { volumeL, alkalinityDkh: 8.5 },
      corals: { useDkhPerDay, lightDarkRatio: 1 },
      room: { co2Ppm: 420 },
      gas: { kLaPerH },
      evaporation: { litresPerDay: evaporationLPerDay },
      topOff: {
        reservoirL: evaporationLPerDay * (days + 2),
        additive: 'calciumHydroxide',
        gramsPerL: limewaterGPerLFromMeqPerL(meqPerDay / evaporationLPerDay),
        refillEveryDays: 0,
        pumpLPerH: 1,
        deadBandL: 0.02,
      },
    }),
  );
}

export function lastDayMean({ trace }: Run, column: 'ph_nbs' | 'alkalinity_dkh'): number {
  const day = readColumn(trace, column).slice(-24);
  return day.reduce((sum, value) => sum + value, 0) / day.length;
}

/** Steady pH by kLa, from a separate simulator; at a kLa of 0.3 it found none. */
const expected = { 1: 8.64, 3: 8.35 };

export function limewaterSteadyChecks(): Check[] {
  return Object.entries(expected).flatMap(([kLaPerH, ph]) => {
    const trial = limewaterRun(Number(kLaPerH));
    const origin = {
      id: `limewater-steady/kLa ${kLaPerH}`,
      source: 'a separate simulator: 8.5 dKH, 1.1 dKH/day by limewater, 420 ppm, S 35, 25 °C',
      howVerified: 'computed',
    } as const;
    return [
      {
        ...origin,
        quantity: 'steady pH (NBS) on limewater alone',
        expected: ph,
        got: lastDayMean(trial, 'ph_nbs'),
        tolerance: 0.015,
        unit: 'pH',
      },
      {
        ...origin,
        quantity: 'alkalinity that the limewater holds meanwhile',
        expected: 8.5,
        got: lastDayMean(trial, 'alkalinity_dkh'),
        tolerance: 0.05,
        unit: 'dKH',
      },
    ];
  });
}
