import { describe, expect, it } from 'vitest';
import { faultKinds, responseKinds } from '../../shared/faults/faultKinds';
import { newFault, newResponse } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { faultIds, responseIds } from '../../shared/scenario/faults';
import { scenarioOf } from '../../shared/scenario/write';
import { run } from '../../workers/engine/run';

/** A tank with everything that can break. */
const tank: Scenario = scenarioOf({
  type: 'paper-reef/scenario',
  version: 4,
  title: 'everything that can break',
  days: 3,
  tank: { volumeL: 300, alkalinityDkh: 8.5 },
  corals: { useDkhPerDay: 1 },
  photosynthesis: { grossMmolPerLPerDay: 0.8, refugiumMmolPerLPerDay: 0.2 },
  calciumReactor: { dripLPerH: 1, effluentDkh: 30, effluentPhNbs: 6.6 },
  topOff: { additive: 'calciumHydroxide', gramsPerL: 1, settledG: 30, refillEveryDays: 1 },
  evaporation: { litresPerDay: 8 },
  dosers: [
    {
      name: 'soda',
      recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 40 }],
      mlPerDay: 60,
      schedule: { way: 'doses', pumpMlPerMin: 10 },
    },
  ],
  waterChanges: { percent: 10, everyDays: 1, continuousLPerDay: 5 },
  outflows: { skimmingLPerDay: 1 },
});

const begins = { day: 1, hour: 6 };
const rows = (scenario: Scenario) => {
  const { trace } = run(scenario);
  return new Float64Array(trace.buffer);
};
const usual = rows(tank);
const firstDifference = (values: Float64Array) => {
  const at = values.findIndex((value, i) => value !== usual[i]);
  return at < 0 ? -1 : at % (tank.days * 24 + 1);
};

describe.each(faultIds)('the fault %s', (kind) => {
  it('has words, moves the tank, and only from the hour on at which it begins', () => {
    const hit = rows({ ...tank, faults: [newFault(kind, { ...begins, endsAfterH: 20 })] });
    expect(faultKinds[kind].label).not.toBe('');
    expect(firstDifference(hit)).not.toBe(-1);
    for (let i = 0; i < usual.length; i++) {
      if (i % 73 < begins.hour) expect(hit[i]).toBe(usual[i]);
    }
  });
});

describe.each(responseIds)('the response %s', (kind) => {
  it('has words, moves the tank, and only from the hour on at which it begins', () => {
    const hit = rows({ ...tank, responses: [newResponse(kind, { ...begins, hours: 20 })] });
    expect(responseKinds[kind].label).not.toBe('');
    expect(firstDifference(hit)).not.toBe(-1);
    for (let i = 0; i < usual.length; i++) {
      if (i % 73 < begins.hour) expect(hit[i]).toBe(usual[i]);
    }
  });
});
