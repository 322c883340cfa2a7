import { describe, expect, it } from 'vitest';
import { possibleFaults } from '../../shared/faults/possibleFaults';
import { usualHandAir } from '../../shared/faults/handAir';
import { nightCut } from '../../shared/faults/nightCut';
import { usualOptions } from '../../workers/engine/simulation';
import { actsBuy } from '../../workers/studies/drill/actsBuy';
import { wallSheet } from '../../workers/studies/drill/wallSheet';
import { quietTank } from '../runs/quietTank';
import { scenarioFromFile } from '../runs/scenarioFiles';

const goOn = async () => true;

describe('the sheet for the wall', () => {
  it('lists what a tank can have, and nothing that it cannot', () => {
    const kinds = (own: Parameters<typeof quietTank>[0]) =>
      possibleFaults(quietTank(own)).map(({ kind }) => kind);
    expect(kinds({})).toEqual(['powerCut', 'heater', 'heater', 'roomCo2']);
    const limewater = { reservoirL: 20, additive: 'calciumHydroxide', gramsPerL: 1 } as const;
    expect(kinds({ topOff: limewater })).toEqual(
      expect.arrayContaining(['topOffOn', 'siphon', 'topOffOff', 'strongMix', 'slurry']),
    );
    expect(kinds({ topOff: { ...limewater, additive: 'sodiumBicarbonate' } })).not.toContain(
      'slurry',
    );
    const warmTank = quietTank({ tank: { tempC: 36 } });
    for (const { endTempC } of possibleFaults(warmTank)) expect(endTempC).toBeLessThanOrEqual(38);
  });

  it('gives a power cut the numbers that the card has, and of several pumps the worst', async () => {
    const plan = { ...scenarioFromFile('drill-doser-stuck.json'), faults: [], responses: [] };
    const weak = plan.dosers.map((doser) => ({
      ...doser,
      recipe: doser.recipe.map((part) => ({ ...part, gramsPerL: part.gramsPerL / 20 })),
    }));
    const two = { ...plan, dosers: [...weak, ...plan.dosers] };
    const sheet = (await wallSheet(two, usualHandAir, usualOptions, goOn))!;
    const cut = sheet.find(({ fault }) => fault.kind === 'powerCut')!;
    const card = (await actsBuy(nightCut(two), usualHandAir, usualOptions, goOn))!;
    expect(cut.first).toEqual(card.first);
    expect(cut.fault).toEqual(nightCut(two).faults[0]);
    expect(cut.air.map(({ act }) => act)).toEqual(['batteryAir', 'scoop']);
    expect(sheet.find(({ fault }) => fault.kind === 'doserOn')!.fault.pump).toBe(weak.length + 1);
  });
});
