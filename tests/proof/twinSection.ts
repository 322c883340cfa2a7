import type { Twins } from '../log/twins';
import { number, table } from './tables';

const LEAST = 0.93;
const MOST = 0.97;

interface BothTwins {
  readonly assumed: Twins;
  readonly unassumed: Twins;
}

/** The stated interval must hold the truth where the tank is what the fit takes it for. */
export const twinFailures = ({ assumed }: BothTwins): string[] =>
  assumed.coverage >= LEAST && assumed.coverage <= MOST
    ? []
    : [`twins: 95 % intervals held ${assumed.coverage} of the true consumptions`];

const row = (name: string, twins: Twins): string[] => [
  name,
  String(twins.count),
  `${number(twins.coverage * 100)} %`,
  number(twins.medianErrorDkhPerDay),
  number(twins.lineMedianErrorDkhPerDay),
];

/** What a fit makes of logs whose truth is known. */
export const twinSection = ({ assumed, unassumed }: BothTwins): string =>
  `## Logs whose truth is known\n\nEach twin is a tank of the engine: 10 to 14 days of tests with 0.15 dKH of noise at irregular hours, a water change and two doses between. The second row draws a gas exchange and an answer to saturation that the fit does not assume: its interval is then too narrow, and the page says so.\n\n${table(
    [
      'tank',
      'logs',
      'true use in the 95 % interval',
      'median error, dKH/day',
      'of a straight line, doses added back',
    ],
    [row('as the fit assumes', assumed), row('other kLa and Ω law', unassumed)],
  )}`;
