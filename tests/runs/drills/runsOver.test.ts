import { expect, it } from 'vitest';
import { newFault } from '../../../shared/scenario/newFault';
import { timelineOf } from '../../../src/say/drill/timeline';
import { usualOptions } from '../../../workers/engine/simulation';
import { rehearse } from '../../../workers/studies/drill/rehearse';
import { quietTank } from '../quietTank';

it('a drill tells when the sump runs over', async () => {
  const drill = quietTank({
    days: 1,
    outflows: { spareL: 15 },
    topOff: { reservoirL: 40 },
    faults: [newFault('siphon', { day: 1, hour: 2, endsAfterH: 4, litresPerH: 10 })],
  });
  const answer = (await rehearse(drill, usualOptions, async () => true))!;
  const over = timelineOf(drill, answer).find(({ text }) => text.includes('runs over'))!;
  // The 15 L of room are full an hour and a half after the siphon begins.
  expect(over.timeH).toBeCloseTo(3.5, 1);
});
