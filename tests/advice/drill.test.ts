import { describe, expect, it } from 'vitest';
import { newFault } from '../../shared/scenario/newFault';
import { drillSentences } from '../../src/say/drill/drillSentences';
import { usualOptions } from '../../workers/engine/simulation';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { dumpAt } from '../../workers/studies/drill/dump';
import { layersOf } from '../../workers/studies/drill/layers';
import { rehearse } from '../../workers/studies/drill/rehearse';
import { worstDump } from '../../workers/studies/drill/worstDump';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { answerOf, stuckPump, worst } from './anyDrill';

describe('a drill', () => {
  it('says when the reservoir would have been empty although the failure was noticed before', async () => {
    const early = {
      ...stuckPump,
      faults: stuckPump.faults.map((f) => ({ ...f, endsAfterH: 1.5 })),
    };
    const answer = await answerOf(early);
    expect(answer.outcome.switchings.some(({ dry }) => dry)).toBe(false);
    expect(drillSentences(answer, early).join(' ')).toMatch(
      /If nobody notices, the reservoir is empty at 05:2\d and pH peaks at 9\.\d+/,
    );
  });

  it('gives one plan one number for its full dump, wherever it is asked', () => {
    const plan = { ...stuckPump, faults: [] };
    const asked = worstDump(plan)!;
    const nothing = layersOf(plan, asked.clockHour).find(({ stop }) => stop.id === 'nothing')!;
    const drilled = runDrill(dumpAt(plan, asked.clockHour));
    expect(asked.peakPh).toBeCloseTo(worst(drilled.lines), 6);
    // Followed for longer, what is left alone may still creep up by what a probe cannot tell.
    expect(Math.abs(nothing.peakPh - asked.peakPh)).toBeLessThan(0.05);
    expect(nothing.peakPh).toBeGreaterThanOrEqual(asked.peakPh - 1e-9);
  });

  it('says so when the trial ends before anything breaks', async () => {
    const dries = {
      ...stuckPump,
      days: 14,
      topOff: { ...stuckPump.topOff, reservoirL: 0 },
      evaporation: { ...stuckPump.evaporation, litresPerDay: stuckPump.tank.volumeL * 0.12 },
      faults: [newFault('heater', { day: 13, hour: 2 })],
    };
    const answer = await answerOf(dries);
    expect(answer.outcome.stopped).toBeDefined();
    const told = drillSentences(answer, dries).join(' ');
    expect(told).toContain('The trial ends before anything breaks');
    expect(told).not.toContain('NaN');
  });

  it('names oxygen first in a power cut', async () => {
    const own = scenarioFromFile('drill-power-cut.json');
    const told = drillSentences(await answerOf(own), own);
    expect(told[0]).toMatch(
      /^Oxygen goes first: below 4 mg\/L after \d+ min to \d+ min, below 2\.8 mg\/L after .* h\./,
    );
    expect(told[0]).toContain('nobody has measured it');
    expect(told[0]!.length).toBeLessThan(160);
    expect(told[2]).toMatch(/mg\/L an hour breathed, .* Move water or air before you reckon\.$/);
    expect(told[1]).toContain('pH');
    expect(told[1]).toContain('oxygen goes below 4 mg/L');
    const typed = { ...own, oxygen: { ...own.oxygen, respirationMmolPerLPerDay: 2 } };
    const typedTold = drillSentences(await answerOf(typed), typed);
    expect(typedTold[0]).not.toContain('nobody has measured it');
    expect(typedTold[2]).toContain('as you typed it');
    expect(drillSentences(await answerOf(stuckPump), stuckPump).join()).not.toContain('Oxygen');
  });
});

it('one failure has one worst hour, whatever hour of its day was asked about', async () => {
  const plan = { ...scenarioFromFile('limewater-holds.json'), responses: [], days: 4 };
  const { clockHour } = plan.start;
  const worsts = [];
  for (const hour of [2, 8, 14, 20]) {
    // All within the first day of the trial, which ends at the hour it began.
    const fault = newFault('topOffOn', { day: hour < clockHour ? 2 : 1, hour, endsAfterH: 6 });
    const answer = await rehearse({ ...plan, faults: [fault] }, usualOptions, async () => true);
    worsts.push(answer!.worst?.peakPh ?? worst(answer!.outcome.lines));
  }
  for (const one of worsts) expect(one).toBeCloseTo(Math.max(...worsts), 6);
});
