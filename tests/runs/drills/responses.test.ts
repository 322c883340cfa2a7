import { expect, it } from 'vitest';
import { usualOptions } from '../../../workers/engine/simulation';
import { highest } from '../../../shared/verdict/measures';
import { run } from '../../../workers/engine/run';
import { dumpAt } from '../../../workers/studies/drill/dump';
import { worstDump } from '../../../workers/studies/drill/worstDump';
import { layersOf } from '../../../workers/studies/drill/layers';
import { newFault } from '../../../shared/scenario/newFault';
import { plainResponses, type ResponsePlan } from '../../../workers/studies/drill/responsePlans';
import { tryResponses } from '../../../workers/studies/drill/responses';
import { patience } from '../../laws/size';
import { scenarioFromFile } from '../scenarioFiles';
import { stopTitle } from '../../../src/say/drill/stopTitle';

const scenario = scenarioFromFile('drill-stuck-pump.json');

it(
  'responses bring pH back no later than unplugging alone, and nothing at all is worst',
  async () => {
    const choices = { kLaPerH: 6, co2Ppm: 5000, co2Hours: 4, changePercent: 25 };
    const early = {
      ...scenario,
      precipitation: { ...scenario.precipitation, mode: 'off' as const },
      faults: scenario.faults.map((fault) => ({ ...fault, endsAfterH: 4 })),
    };
    const results = (await tryResponses(early, choices, usualOptions, async () => true))!;
    expect(results.map(({ remedy }) => remedy.id)).toEqual(
      'nothing stop aerate carbonated co2Air change'.split(' '),
    );
    const outside = new Map(results.map(({ remedy, outsideH }) => [remedy.id, outsideH]));
    for (const id of ['aerate', 'carbonated', 'co2Air', 'change'] as const) {
      expect(outside.get(id)).toBeLessThan(outside.get('stop')!);
    }
    expect(outside.get('nothing')).toBeGreaterThan(outside.get('stop')!);
  },
  patience,
);

it('what was poured in is noticed at once, and not stopped', async () => {
  const choices = { kLaPerH: 6, co2Ppm: 5000, co2Hours: 4, changePercent: 25 };
  const { day, hour } = scenario.faults[0]!;
  const over = { ...scenario, faults: [newFault('overdose', { day, hour, grams: 60 })] };
  const results = (await tryResponses(over, choices, usualOptions, async () => true))!;
  expect(results.map(({ remedy }) => remedy.id)).toEqual(
    'nothing aerate carbonated co2Air change'.split(' '),
  );
  const [{ scenario: aerated }] = plainResponses(over, choices).slice(-1) as [ResponsePlan];
  expect(aerated.responses[0]).toMatchObject({ day, hour });
});

it(
  'each protection leaves less than none, plain water least of all',
  () => {
    const layers = layersOf(scenario, 12);
    const peak = (id: string) => layers.find(({ stop }) => stop.id === id)!.peakPh;
    expect(stopTitle(layers[0]!.stop)).toBe('plain water in the reservoir');
    for (const { peakPh } of layers) expect(peakPh).toBeLessThanOrEqual(peak('nothing') + 1e-9);
    expect(peak('secondSwitch')).toBeLessThan(peak('halfReservoir'));
  },
  patience,
);

it('the worst dump of a plan is no better than one at any hour, and none without a reservoir', () => {
  const worst = worstDump(scenario)!;
  for (const hour of [0, 6, 15]) {
    const { trace } = run(dumpAt(scenario, hour));
    expect(highest(trace, 'ph_nbs').value).toBeLessThanOrEqual(worst.peakPh + 0.01);
  }
  const without = { ...scenario, topOff: { ...scenario.topOff, reservoirL: 0 } };
  expect(worstDump(without)).toBeUndefined();
});
