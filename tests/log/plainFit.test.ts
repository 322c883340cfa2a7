import { expect, it, vi } from 'vitest';
import { scenarioOf } from '../../shared/scenario/write';
import { asItHappened } from '../../workers/studies/fit/asItHappened';
import { Model } from '../../workers/studies/fit/model';
import { parametersOf } from '../../workers/studies/fit/parameters';
import { plainFit } from '../../workers/studies/fit/plainFit';

const still = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 12 },
  corals: { growthPercentPerDay: 0 },
});
const readings = [12, 10.9, 10, 9.3, 8.8, 8.5].map((alkalinityDkh, i) => ({
  ...{ at: `2026-03-0${i + 1}T10:00`, alkalinityDkh },
}));

it('a log of corals that do not grow is fitted once: begun anew, a keeper would wait thrice as long', () => {
  const happened = asItHappened(still, readings);
  const model = new Model(happened, parametersOf(happened));
  const runs = vi.spyOn(model, 'readings');
  const { atBound } = plainFit(model);
  expect(atBound.map((i) => model.parameters[i]!.id)).toEqual(['growth']);
  // One start takes a dozen, two more 28 beside it.
  expect(runs.mock.calls.length).toBeLessThan(20);
});
