import { readColumn, readLedger } from '../../../shared/trace/trace';
import { run } from '../../../workers/engine/run';
import type { Check } from '../../reference/check';
import { quietTank } from '../quietTank';

interface Habit {
  readonly percent: number;
  readonly everyDays: number;
  readonly useDkhPerDay: number;
}

const saltDkh = 9;
const startDkh = 8;
const days = 364;

/** Just before each change, from the run and from the series with the ledger's own use. */
export function changes({ percent, everyDays, useDkhPerDay }: Habit) {
  const { trace } = run(
    quietTank({
      days,
      tank: { alkalinityDkh: startDkh },
      corals: { useDkhPerDay },
      waterChanges: { percent, everyDays, hour: 12, salt: { alkalinityDkh: saltDkh } },
    }),
  );
  const dkh = readColumn(trace, 'alkalinity_dkh');
  const skeleton = readLedger(trace, 'calcification');
  const fraction = percent / 100;
  let series = startDkh;
  let usedUntil = 0;
  let used = 0;
  let worst = 0;
  // The change itself falls on the hour: the row before it is an hour early.
  for (let hour = (everyDays - 1) * 24 + 12; hour <= days * 24; hour += everyDays * 24) {
    used = usedUntil - skeleton[hour]!;
    usedUntil = skeleton[hour]!;
    series = (series - used) * (1 - fraction) + fraction * saltDkh;
    worst = Math.max(worst, Math.abs(dkh[hour]! - series));
  }
  const limit = (use: number) => saltDkh - (use * (1 - fraction)) / fraction;
  return {
    worst,
    end: dkh[lastChange(everyDays)]!,
    limit: limit(used),
    limitOfTypedUse: limit(useDkhPerDay * everyDays),
  };
}

function lastChange(everyDays: number): number {
  const first = (everyDays - 1) * 24 + 12;
  return first + Math.floor((days * 24 - first) / (everyDays * 24)) * everyDays * 24;
}

const habits: Habit[] = [
  { percent: 15, everyDays: 7, useDkhPerDay: 0.05 },
  { percent: 20, everyDays: 7, useDkhPerDay: 0.1 },
  { percent: 10, everyDays: 3, useDkhPerDay: 0.1 },
];

export const waterChangeLimitChecks = (): Check[] =>
  habits.flatMap((habit) => {
    const { worst, end, limit } = changes(habit);
    const origin = {
      id: `water-change-limit/${habit.percent} % every ${habit.everyDays} days/${habit.useDkhPerDay}`,
      source: 'the geometric series, with the use that the ledger booked',
      howVerified: 'computed',
      unit: 'dKH',
    } as const;
    const quantity = 'alkalinity after a change';
    return [
      {
        ...origin,
        quantity: `${quantity}, step by step`,
        expected: 0,
        got: worst,
        tolerance: 0.01,
      },
      {
        ...origin,
        quantity: `${quantity}, limit after a year`,
        expected: limit,
        got: end,
        tolerance: 0.01,
      },
    ];
  });
