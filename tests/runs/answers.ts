import type { Scenario } from '../../shared/scenario/schema';
import { readColumn } from '../../shared/trace/trace';
import { dayOf, lastOf, ledgerBetween, lowest } from '../../shared/verdict/measures';
import { lineOf } from '../../shared/verdict/lineResult';
import type { ToldVerdict } from '../../src/say/verdict/verdict';
import type { Run } from '../../workers/engine/run';

export interface Played {
  readonly scenario: Scenario;
  readonly trial: Run;
  readonly verdict: ToldVerdict;
}

/** One number that an answer must state, with the digits it is stated to. */
export type Stated = readonly [what: string, value: number, digits: number];

const range = ({ trial: { trace, lines } }: Played): Stated[] => [
  ['lowest dKH', lineOf(lines, 'alkalinityLow').worst, 1],
  ['highest dKH', lineOf(lines, 'alkalinityHigh').worst, 1],
  ['days', (trace.rows - 1) / 24, 0],
];

function fall({ trial: { trace, crossings }, scenario }: Played): Stated[] {
  const first = crossings.find(({ limit }) => limit === 'alkalinityLow');
  return [
    ['limit', scenario.limits.alkalinityLowDkh, 0],
    ['day of leaving it', first ? dayOf(first.timeH) : NaN, 0],
    ['dKH at the end', lastOf(trace, 'alkalinity_dkh'), 1],
    ['lowest pH', lowest(trace, 'ph_nbs').value, 2],
  ];
}

const peakPh = ({ trial: { lines } }: Played): Stated => [
  'highest pH',
  lineOf(lines, 'phHigh').worst,
  2,
];

const lowestPh = ({ trial: { lines } }: Played): Stated => [
  'lowest pH',
  lineOf(lines, 'phLow').worst,
  2,
];

const limewater = ({ verdict }: Played): Stated[] => [
  ['brought by limewater', verdict.limewater?.broughtDkhPerDay ?? NaN, 2],
  ['used', verdict.limewater?.useDkhPerDay ?? NaN, 2],
];

/** Whether the plan does what was asked, and the numbers that say how. */
export const answers: Record<
  string,
  { holds: boolean; headline?: RegExp; numbers: (played: Played) => Stated[] }
> = {
  'grow-out-near-ten.json': {
    holds: true,
    numbers: (played) => [
      ...limewater(played),
      ['bicarbonate, dKH a day', ledgerBetween(played.trial.trace, 'stock1', 0, 1440) / 60, 2],
      ...range(played).slice(0, 2),
      peakPh(played),
    ],
  },
  'calcium-reactor-raceway.json': {
    holds: true,
    numbers: (played) => [
      ['reactor, dKH a day', ledgerBetween(played.trial.trace, 'reactorMedia', 0, 1440) / 60, 2],
      ...range(played),
      lowestPh(played),
      peakPh(played),
    ],
  },
  'over-fed.json': {
    holds: false,
    numbers: (played) => [
      [
        'net loss to nitrate, dKH a day',
        -['nitrification', 'feeding'].reduce(
          (sum, row) => sum + ledgerBetween(played.trial.trace, row, 0, 720) / 30,
          0,
        ),
        2,
      ],
      ...fall(played),
      ['nitrate at the end', lastOf(played.trial.trace, 'nitrate_mg_l'), 0],
    ],
  },
  'pico-tank.json': {
    holds: true,
    numbers: (played) => [
      ...range(played).slice(0, 2),
      ['dKH at the end', lastOf(played.trial.trace, 'alkalinity_dkh'), 1],
      ['largest change in a day', lineOf(played.trial.lines, 'alkalinityChange').worst, 2],
    ],
  },
  'recovery-from-six.json': {
    holds: false,
    headline: /^rises from /,
    numbers: (played) => [
      ['dKH at the start', played.scenario.tank.alkalinityDkh, 1],
      ['dKH at the end', lastOf(played.trial.trace, 'alkalinity_dkh'), 1],
      ['largest change in a day', lineOf(played.trial.lines, 'alkalinityChange').worst, 2],
    ],
  },
  'winter-room.json': {
    holds: true,
    numbers: (played) => [
      ...limewater(played),
      ...range(played).slice(0, 2),
      lowestPh(played),
      peakPh(played),
    ],
  },
  'beyond-limewater.json': {
    holds: true,
    numbers: (played) => [
      ...limewater(played),
      ...range(played).slice(0, 2),
      ['share of limewater, %', 100 * (played.verdict.limewater?.covered ?? NaN), 0],
      ['pump, dKH a day', ledgerBetween(played.trial.trace, 'stock1', 0, 1440) / 60, 2],
      peakPh(played),
    ],
  },
  'do-nothing.json': {
    holds: false,
    numbers: (played) => [
      ...fall(played),
      ['lowest calcium', Math.min(...readColumn(played.trial.trace, 'calcium_mg_l')), 0],
    ],
  },
  'limewater-holds.json': {
    holds: true,
    numbers: (played) => [...limewater(played), ...range(played), peakPh(played)],
  },
  'water-changes-high-salt.json': {
    holds: true,
    numbers: (played) => [
      ...range(played),
      ['dKH at the end', lastOf(played.trial.trace, 'alkalinity_dkh'), 1],
    ],
  },
  'water-changes-low-salt.json': { holds: false, numbers: fall },
};
