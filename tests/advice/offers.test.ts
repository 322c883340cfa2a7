import fc from 'fast-check';
import { expect, it } from 'vitest';
import { promiseOf } from '../../src/say/plan/promise';
import { scenarioOf } from '../../shared/scenario/write';
import { threePlans } from '../../workers/studies/plan/threePlans';
import { patience, runsOf } from '../laws/size';
import { anyLog } from './anyLog';
import { offeredTo } from './offered';

it(
  'from one to sixty readings, every offered plan keeps every limit at every consumption that the log allows, its own full dump included; every refusal names a way out',
  () => {
    let offered = 0;
    fc.assert(
      fc.property(anyLog, fc.double({ min: -1, max: 1, noNaN: true }), (log, aside) => {
        const { plans, breaches } = offeredTo(log, aside);
        expect(breaches).toEqual([]);
        for (const plan of plans) {
          offered += Number(plan.offered);
          const told = promiseOf(plan);
          expect(told).toMatch(plan.offered ? /^Inside your/ : /^Not offered: .*\. \S.*\.$/);
          expect(told).not.toMatch(/NaN|undefined|Infinity/);
        }
      }),
      runsOf(120),
    );
    // Most logs of nowhere in particular leave nothing to offer; some must.
    expect(offered).toBeGreaterThan(3);
  },
  patience * 3,
);

it('a plan names what is outside meanwhile, and does not call it inside', () => {
  const now = scenarioOf({
    tank: { volumeL: 300, alkalinityDkh: 8.5, calciumMgPerL: 350 },
    corals: { useDkhPerDay: 1 },
  });
  const kit = { scoopG: 0, pumpMlPerMin: 0 };
  const plans = threePlans({ now, targetDkh: 8.5, giveOrTakeDkhPerDay: 0.05, kit });
  const told = plans.filter(({ offered }) => offered).map(promiseOf);
  expect(told.length).toBeGreaterThan(0);
  for (const text of told) {
    expect(text).toContain('no farther out with it: calcium');
    expect(text).not.toContain('and your other limits');
  }
});
