import { scenarioOf } from 'paper-reef/shared/scenario';
import { readColumn, readLedger } from 'paper-reef/shared/trace';
import { run, runDrill } from 'paper-reef/workers/engine';
import { answerLog, correctBefore, offers, planQuestion } from 'paper-reef/workers/studies';

// A tank by the few fields that differ from the usual one; all else is filled in.
const plan = scenarioOf({ tank: { volumeL: 300 }, corals: { useDkhPerDay: 0.4 } });
const { trace, lines } = run({ ...plan, days: 7 });
console.log('dKH after a week:', readColumn(trace, 'alkalinity_dkh').at(-1)!.toFixed(2));
console.log('dKH grown:', readLedger(trace, 'calcification').at(-1)!.toFixed(2));
console.log(
  'passed:',
  lines.flatMap(({ id, firstH }) => (firstH === undefined ? [] : [id])).join(),
);

const soda = { additive: 'sodiumCarbonate', gramsPerL: 60 };
const drill = runDrill(
  scenarioOf({
    days: 1,
    dosers: [{ name: 'soda', recipe: [soda], mlPerDay: 100 }],
    faults: [{ kind: 'doserOn', day: 1, hour: 2, endsAfterH: 0.5 }],
  }),
);
const highest = drill.lines.find(({ id }) => id === 'alkalinityHigh')!;
console.log('dKH while the pump is stuck:', highest.worst.toFixed(2));

const tests = [8.4, 8.1, 8.2, 7.8, 7.7, 7.5];
const readings = tests.map((alkalinityDkh, i) => ({
  at: `2026-03-0${i + 1}T10:30`,
  alkalinityDkh,
}));
const answer = answerLog(plan, readings, 0.1);
// Too little to tell, or a fit that found no rest, has a reason instead.
if ('why' in answer) throw new Error(answer.why);
const { dkhPerDay, standardErrorDkhPerDay } = answer.useNow;
console.log('use, dKH a day:', dkhPerDay.toFixed(2), '±', (2 * standardErrorDkhPerDay).toFixed(2));
console.log('days until the next test:', answer.nextTest.inDays.toFixed(1), answer.nextTest.reason);

const question = planQuestion(plan, readings, answer, { targetDkh: 8.5 });
const [limewater] = offers(question);
console.log(limewater!.id, limewater!.offered, limewater!.scenario.topOff.gramsPerL, 'g/L');
const first = correctBefore(question, limewater!.scenario);
console.log('to get there:', first.kind, first.kind === 'raise' ? first.days : '', 'days');
