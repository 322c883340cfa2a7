import { expect, it } from 'vitest';
import { usualHandAir } from '../../shared/faults/handAir';
import { scenarioOf } from '../../shared/scenario/write';
import { firstFaultH } from '../../shared/verdict/drillOutcome';
import { oxygenLeft } from '../../shared/verdict/oxygenLeft';
import { sightsOf } from '../../src/diary/away/sights';
import { spanText } from '../../src/say/clockText';
import { timelineOf } from '../../src/say/drill/timeline';
import { usualOptions } from '../../workers/engine/simulation';
import { away } from '../../workers/studies/away/away';
import { unattended } from '../../workers/studies/away/unattended';
import { nobodyLooks } from '../../workers/studies/away/unnoticed';
import { rehearse } from '../../workers/studies/drill/rehearse';
import { patience } from '../laws/size';

const goOn = () => Promise.resolve(true);
const plan = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.5 },
  start: { clockHour: 9 },
  corals: { useDkhPerDay: 1.1 },
  evaporation: { litresPerDay: 4 },
  topOff: { reservoirL: 18, additive: 'calciumHydroxide', gramsPerL: 1.1 },
});

it(
  'the sitter’s sheet and the list of moments print the soonest end of the time that a drill tells',
  async () => {
    const question = { now: plan, giveOrTakeDkhPerDay: 0.1, days: 9, visitDays: 0 };
    const left = away(question);
    const looks = (await nobodyLooks(left, usualHandAir, usualOptions, goOn))!;
    const cut = looks.failures.find(({ fault }) => fault.kind === 'powerCut')!;
    expect(cut.harm!.line.id).toBe('oxygenHarm');
    const { soonestH, asSetH } = cut.harm!.reach;
    expect(soonestH).toBeLessThan(asSetH! / 1.5);

    const { fault } = cut;
    const drill = { ...unattended(left.provided.scenario, left.days), days: 3, faults: [fault] };
    const answer = (await rehearse(drill, usualOptions, goOn))!;
    const harm = oxygenLeft(answer, drill).at(-1)!;
    expect(harm.soonestH).toBeCloseTo(soonestH!, 1);

    const dark = sightsOf({ question, away: left, isRead: false }, looks).find(
      ({ id }) => id === 'dark',
    )!;
    expect(dark.call).toContain(`as soon as ${spanText(soonestH!)} after`);

    const [first, second] = timelineOf(drill, answer).filter(({ text }) => text.includes('2.8'));
    expect(first!.text).toMatch(/at the soonest$/);
    expect(first!.timeH).toBeCloseTo(firstFaultH(drill) + harm.soonestH!, 6);
    expect(second!.text).toMatch(/as set$/);
  },
  patience,
);
