import { median, quantile } from 'd3-array';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { answerLog } from '../../workers/studies/answerLog';
import { patience, runsOf } from '../laws/size';
import { anyKept, carriers, type Kept } from './anyKept';
import { AHEAD_DAYS, lineAhead } from './testedDaily';

interface Off {
  readonly carrier: Kept['carrier'];
  readonly ownDkh: number;
  readonly lineDkh: number;
  /** Whether the 95 % of the forecast hold it. */
  readonly held: boolean;
}

const LEAST_HELD = 0.9;

function offOf(kept: Kept): Off {
  const answer = answerLog(kept.plan, kept.log, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  const { dkh, spreadDkh } = answer.fan.ahead;
  const ownDkh = Math.abs(dkh[AHEAD_DAYS * 24]! - kept.thenDkh);
  return {
    carrier: kept.carrier,
    ...{ ownDkh, held: ownDkh < 1.96 * spreadDkh[AHEAD_DAYS * 24]! },
    lineDkh: Math.abs(lineAhead(kept.values, AHEAD_DAYS, kept.days) - kept.thenDkh),
  };
}

it(
  'whatever a tank is dosed with, a week ahead is forecast nearer than by a line through its readings',
  () => {
    const found: Off[] = [];
    fc.assert(
      fc.property(anyKept, (kept) => {
        found.push(offOf(kept));
      }),
      runsOf(300, 0.6),
    );
    const of = (all: readonly Off[], name: 'ownDkh' | 'lineDkh') => all.map((one) => one[name]);
    console.log(
      carriers
        .map((carrier) => {
          const own = found.filter((one) => one.carrier === carrier);
          const told = (name: 'ownDkh' | 'lineDkh') =>
            [0.5, 0.9, 1].map((part) => quantile(of(own, name), part)?.toFixed(2)).join(' ');
          return `${carrier} ${own.length}: off by ${told('ownDkh')} (a line ${told('lineDkh')})`;
        })
        .join('; '),
    );
    expect(median(of(found, 'ownDkh'))!).toBeLessThan(0.5 * median(of(found, 'lineDkh'))!);
    expect(quantile(of(found, 'ownDkh'), 0.9)!).toBeLessThan(0.6);
    const chance = 3 * Math.sqrt((LEAST_HELD * (1 - LEAST_HELD)) / found.length);
    const held = found.filter((one) => one.held).length / found.length;
    expect(held).toBeGreaterThan(LEAST_HELD - chance);
    const lost = found.filter(({ ownDkh, lineDkh }) => ownDkh > lineDkh + 0.3);
    expect(lost.length / found.length).toBeLessThan(0.05);
  },
  patience,
);
