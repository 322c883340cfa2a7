import type { Twins } from '../log/twins/twins';
import { number, table } from './tables';

const percent = (share: number): string => `${number(share * 100)} %`;

/** The shortest time that a share of all fits took, ms. */
const quantile = (ms: readonly number[], share: number): string =>
  number(ms.toSorted((a, b) => a - b)[Math.min(ms.length - 1, Math.floor(share * ms.length))]!);

const row = (twins: Twins): string[] => [
  twins.variant,
  String(twins.count),
  String(twins.stuck),
  percent(twins.held),
  percent(twins.heldOrSaid),
  number(twins.medianErrorDkhPerDay),
  number(twins.lineMedianErrorDkhPerDay),
  percent(twins.inFanFirstWeek),
  percent(twins.inFanSecondWeek),
];

/** What a fit makes of logs whose truth is known. */
export function twinSection(all: readonly Twins[]): string {
  const ms = all.flatMap((twins) => twins.ms);
  const heads = [
    'log',
    'twins',
    'never fitted',
    'true use in the 95 % interval of the readings',
    'in the one that allows for typed numbers, or said',
    'median error, dKH/day',
    'of a straight line, doses added back',
    'readings in the fan, days 1–7',
    'days 8–14',
  ];
  return `## Logs whose truth is known\n\nEach twin is a tank of the engine with settings that the fit does not see: 40 to 2,000 L, 0.2 to 4 dKH a day, limewater, pairs, bicarbonate by hand or water changes, growth on or off, 10 to 60 days, σ 0.1 to 0.2. The fit begins from the untouched default with volume and dosing typed. Truth is what was taken in the log's last 48 hours. Fit and forecast took ${quantile(ms, 0.5)} ms in the middle, ${quantile(ms, 0.99)} ms for all but one in a hundred, ${quantile(ms, 1)} ms at most.\n\n${table(heads, all.map(row))}`;
}
