import { describe, expect, it } from 'vitest';
import { newFault } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { drillSentences } from '../../src/say/drill/drillSentences';
import { passedAnyway } from '../../shared/verdict/anyway';
import { lineOf } from '../../shared/verdict/lineResult';
import { firstFaultH } from '../../shared/verdict/drillOutcome';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { causedLines, courseOf } from '../../workers/studies/drill/passing';
import { patience } from '../laws/size';
import { quietTank } from '../runs/quietTank';
import { SAME_H, answerOf } from './anyDrill';

describe('a drill', () => {
  it(
    'does not blame a failure for what happens without it, and blames it for what it adds',
    async () => {
      // Nothing replaces what the corals take: 7 dKH is passed on the third day whatever fails.
      const undosed = quietTank({
        days: 6,
        corals: { useDkhPerDay: 0.5 },
        evaporation: { litresPerDay: 4 },
        topOff: { reservoirL: 20, pumpLPerH: 6 },
      });
      const told = async (fault: Scenario['faults'][number]) =>
        drillSentences(await answerOf({ ...undosed, faults: [fault] }), undosed).join(' ');
      const still = await told(
        newFault('heater', { day: 2, hour: 2, endsAfterH: 2, endTempC: 25.5 }),
      );
      expect(still).toContain('Not because of the failure: alkalinity goes below 7 dKH');
      expect(still).toContain('takes nothing that is watched beyond your limits that was not');
      const hot = await told(newFault('heater', { day: 2, hour: 2, endsAfterH: 40, endTempC: 34 }));
      expect(hot).toMatch(/^Temperature goes above 27 °C.*pH peaks at [\d.]+, not above your 8\.6/);
      expect(hot).toContain('Not because of the failure: alkalinity goes below 7 dKH');
    },
    patience,
  );

  it('has one idea of blame: what its sentences do not blame it for, its acts are not measured by', () => {
    const undosed = quietTank({ days: 6, corals: { useDkhPerDay: 0.5 } });
    // Warm corals take more: 7 dKH is passed sooner, and no farther than it would be anyway.
    const fault = newFault('heater', { day: 2, hour: 2, endsAfterH: 40, endTempC: 34 });
    const hot = { ...undosed, faults: [fault] };
    const start = settle(hot, usualOptions);
    const course = courseOf(hot, usualOptions, start);
    const calm = courseOf(undosed, usualOptions, start, firstFaultH(hot));
    const low = lineOf(course.lines, 'alkalinityLow');
    expect(low.firstH).toBeLessThan(lineOf(calm.lines, 'alkalinityLow').firstH! - SAME_H);
    expect(passedAnyway(course.lines, calm.lines)).toContain(low);
    const caused = causedLines(course, calm);
    expect(caused.map(({ id }) => id)).toContain('temperatureHigh');
    expect(caused).not.toContain(low);
  });
});
