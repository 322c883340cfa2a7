import { expect, it } from 'vitest';
import { localTimeOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import { scenarioOf } from '../../shared/scenario/write';
import { leavingSentence, slopeSentence } from '../../src/say/fit/answer';
import { answerLog } from '../../workers/studies/answerLog';
import { START_H } from './testedDaily';

const plan = scenarioOf({ tank: { volumeL: 300 }, start: { clockHour: 10 } });

function answered(values: readonly number[]) {
  const log = values.map((alkalinityDkh, day): Reading => {
    return { at: localTimeOf(START_H + day * 24), alkalinityDkh };
  });
  const answer = answerLog(plan, log, 0.1);
  if ('why' in answer) throw new Error(answer.why);
  return answer;
}

it('water that comes down from the upper end of the band is not said to leave it above', () => {
  const falling = answered([12.4, 12, 11.7, 11.3, 11]);
  // From 11 it takes days to fall to 7: no chance of it comes with the first of them.
  expect(falling.leaving!.oneInTenH).toBeGreaterThan(5 * 24);
  expect(leavingSentence(falling, plan)).not.toContain('above');
  const goesOn = answered([8.6, 8.2, 7.8, 7.5, 7.1]);
  expect(leavingSentence(goesOn, plan)).toMatch(/below/);
});

it('readings that stay are not said to rise by 0.00', () => {
  expect(slopeSentence(answered([8.4, 8.5, 8.4, 8.4, 8.5, 8.4, 8.4]))).toMatch(
    /neither rise nor fall/,
  );
  expect(slopeSentence(answered([8.6, 8.2, 7.8, 7.5, 7.1]))).toContain('fall by 0.37');
});
