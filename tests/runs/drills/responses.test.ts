import { expect, it } from 'vitest';
import { usualOptions } from '../../../workers/engine/simulation';
import { layersOf } from '../../../workers/studies/drill/layers';
import { tryResponses } from '../../../workers/studies/drill/responses';
import { patience } from '../../laws/size';
import { scenarioFromFile } from '../scenarioFiles';

const scenario = scenarioFromFile('drill-stuck-pump.json');

it(
  'responses bring pH back no later than unplugging alone, and nothing at all is worst',
  async () => {
    const choices = { kLaPerH: 6, co2Ppm: 5000, co2Hours: 4, changePercent: 25 };
    const early = {
      ...scenario,
      precipitation: { ...scenario.precipitation, mode: 'off' as const },
      faults: scenario.faults.map((fault) => ({ ...fault, hours: 4 })),
    };
    const results = (await tryResponses(early, choices, usualOptions, async () => true))!;
    expect(results.map(({ id }) => id)).toEqual(
      'nothing stop aerate carbonated co2Air change'.split(' '),
    );
    const outside = new Map(results.map(({ id, outsideH }) => [id, outsideH]));
    for (const id of ['aerate', 'carbonated', 'co2Air', 'change']) {
      expect(outside.get(id)).toBeLessThan(outside.get('stop')!);
    }
    expect(outside.get('nothing')).toBeGreaterThan(outside.get('stop')!);
  },
  patience,
);

it(
  'each protection leaves less than none, plain water least of all',
  () => {
    const layers = layersOf(scenario, 12);
    const peak = (title: string) => layers.find((layer) => layer.title.startsWith(title))!.peakPh;
    expect(layers[0]?.title).toBe('plain water in the reservoir');
    for (const { peakPh } of layers) expect(peakPh).toBeLessThanOrEqual(peak('nothing') + 1e-9);
    expect(peak('a second switch')).toBeLessThan(peak('half the reservoir'));
  },
  patience,
);
