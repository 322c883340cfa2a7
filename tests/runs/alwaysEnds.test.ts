import { describe, expect, it } from 'vitest';
import { passive } from '../../shared/devices/device';
import { scenarioOf } from '../../shared/scenario';
import { readColumn } from '../../shared/trace/trace';
import { compile } from '../../workers/engine/compile';
import { stoppedSentence } from '../../src/say/verdict/stopped';
import { LeftRange } from '../../workers/engine/leftRange';
import { run } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { Simulation, usualOptions } from '../../workers/engine/simulation';
import { patience } from '../laws/size';

/** More growth than the water can feed, so that steps are scaled back as they end. */
const starved = scenarioOf({
  type: 'paper-reef/scenario',
  version: 4,
  days: 3,
  tank: { volumeL: 50.83333333333333, salinityPractical: 36.6 },
  corals: { measuredAs: 'area', rateMmolPerM2PerDay: 370, areaM2: 4.958333333333333 },
  waterChanges: {
    continuousLPerDay: 31.25,
    salinityPractical: 36.53333333333333,
    salt: { alkalinityDkh: 10.625 },
  },
  calciumReactor: { dripLPerH: 6.833333333333333, effluentDkh: 42.166666666666664 },
  additions: [
    { day: 2, hour: 20.442628472222225, additive: 'sodiumHydroxide', grams: 44.5 },
    { day: 2, hour: 19.859302951388898, additive: 'sodiumBicarbonate', grams: 44 },
  ],
});

describe('a trial always ends', () => {
  it(
    'where a starved tank stands a hair before a sensor’s mark (steps of 1e-12 h, once)',
    () => {
      const { trace, stopped } = run(starved);
      expect(stopped).toBeUndefined();
      expect(readColumn(trace, 'alkalinity_dkh')).toHaveLength(73);
    },
    patience,
  );

  it('with a sentence, where a device switches faster than anything can be followed', () => {
    const scenario = scenarioOf({ type: 'paper-reef/scenario', version: 4, days: 1 });
    const plan = compile(scenario, settle(scenario, usualOptions));
    const trembling = { ...passive, id: 'trembling', nextClockH: (timeH: number) => timeH + 1e-6 };
    const simulation = new Simulation({ ...plan, devices: [...plan.devices, trembling] });
    let left: unknown;
    try {
      simulation.advanceTo(1);
    } catch (error) {
      left = error;
    }
    expect(left).toBeInstanceOf(LeftRange);
    expect(stoppedSentence(left as LeftRange)).toMatch(
      /stops at hour 0\.0: something switches or reacts so often \(more than \d+ times/,
    );
  });
});
