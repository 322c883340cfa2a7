import { plainGrowth } from '../../../../workers/engine/firstDay';
import { calcification } from '../../../../shared/processes/calcification';
import type { Check } from '../../../reference/check';
import { quietTank } from '../../quietTank';
import { onlyView } from '../onlyView';

interface Coral {
  readonly growthShape?: 'branching' | 'massive';
  readonly temperatureLaw?: 'bell' | 'none';
  readonly growthPercentPerDay?: number;
}

/** Growth in the same water at another time or temperature, against the first hour's. */
export function growthFactor(coral: Coral, day: number, tempC = 25, startTempC = 25): number {
  const corals = { useDkhPerDay: 1, ...coral };
  const scenario = quietTank({ tank: { tempC: startTempC }, corals });
  const settings = calcification.settings({ ...plainGrowth, scenario, volumeL: 300 })!;
  const rate = (timeH: number, at: number) =>
    calcification.rate(onlyView({ timeH, tempC: at }), settings);
  return rate(day * 24, tempC) / rate(0, startTempC);
}

const growthPercentPerDay = 0.5;
const branching = { growthShape: 'branching', growthPercentPerDay } as const;
const massive = { growthShape: 'massive', growthPercentPerDay } as const;
const doublingDays = Math.log(2) / 0.005;

const check = (id: string, quantity: string, expected: number, got: number, tolerance = 1e-9) =>
  ({
    ...{ id: `growth/${id}`, quantity, expected, got, tolerance, unit: '×' },
    source: 'the law as written',
    howVerified: 'computed',
  }) satisfies Check;

export const growthShapeChecks = (): Check[] => [
  check('branching', 'use after ln 2 / r days', 2, growthFactor(branching, doublingDays)),
  check('branching', 'use after twice as long', 4, growthFactor(branching, 2 * doublingDays)),
  ...[100, 200, 400, 800].map((day) =>
    check(
      `massive/day ${day}`,
      'root of the use, which grows in a straight line',
      1 + 0.0025 * day,
      Math.sqrt(growthFactor(massive, day)),
    ),
  ),
  ...[branching, massive].map((coral) =>
    check(
      `${coral.growthShape}/first hours`,
      'relative growth of use, against what was typed',
      1,
      (growthFactor(coral, 0.01) - 1) / (0.005 * 0.01),
      1e-4,
    ),
  ),
];

/** 25 °C lies two of nine degrees below the best: cos² 20° = 0.8830. */
const bell: [tempC: number, factor: number][] = [
  [15, 0],
  [18, 0],
  [22.5, 0.5 / 0.883022],
  [25, 1],
  [27, 1 / 0.883022],
  [29.5, 0.5 / 0.883022],
  [32, 0],
  [35, 0],
];

export const growthTemperatureChecks = (): Check[] =>
  bell.map(([tempC, factor]) => ({
    ...check(`${tempC} °C`, 'growth against that at 25 °C', factor, NaN, 1e-6),
    got: growthFactor({ temperatureLaw: 'bell', growthPercentPerDay: 0 }, 0, tempC),
    source: 'best at 27 °C, none at 18 or 32',
    howVerified: 'common practice',
  }));
