import { expect, it } from 'vitest';
import { newWater } from '../../shared/events/waterChange';
import { continuousChange } from '../../shared/devices/continuousChange';
import { deviceKinds } from '../../shared/devices/registry';
import { noFactors } from '../../shared/scenario/factors';
import { newFault } from '../../shared/scenario/newFault';
import { solutionKg } from '../../shared/species/block';
import { densityKgPerM3 } from '../../shared/seawater/density';
import { readColumn } from '../../shared/trace/trace';
import { compile } from '../../workers/engine/compile';
import { run, stateAfter } from '../../workers/engine/run';
import { quietTank } from './quietTank';

const hourly = (overrides: Parameters<typeof quietTank>[0], column: 'light' | 'volume_l') =>
  Array.from(readColumn(run(quietTank(overrides)).trace, column));

it('the light is out while there is no mains, and comes back with it', () => {
  const lit = { days: 2, lights: { onHour: 10, hours: 10, rampHours: 0 } };
  const faults = [newFault('powerCut', { day: 1, hour: 12, endsAfterH: 4 })];
  const usual = hourly(lit, 'light');
  // A row at the moment of a switch has what comes after it.
  const isCut = (hour: number) => hour >= 12 && hour < 16;
  expect(hourly({ ...lit, faults }, 'light')).toEqual(
    usual.map((light, hour) => (isCut(hour) ? 0 : light)),
  );
  expect(usual[13]).toBe(1);
});

it('a level sensor that reads low by 3 L has the tank filled 3 L too high, and no more', () => {
  const topOff = { reservoirL: 20, pumpLPerH: 3, deadBandL: 0.5, secondSwitchL: 0 };
  const level = (faults: ReturnType<typeof newFault>[]) =>
    hourly(
      { days: 2, outflows: { spareL: 20 }, evaporation: { litresPerDay: 2 }, topOff, faults },
      'volume_l',
    ).at(-1)!;
  const low = newFault('sensorLow', { day: 1, hour: 0, endsAfterH: 48, sensorLowL: 3 });
  expect(level([low]) - level([])).toBeGreaterThan(2.4);
  expect(level([low]) - level([])).toBeLessThan(3.6);
});

it.each(['skimmingLPerDay', 'leakLPerDay'] as const)('%s carries off its salt', (outflow) => {
  const { trace } = run(
    quietTank({
      days: 10,
      outflows: { [outflow]: 3 },
      topOff: { reservoirL: 100, pumpLPerH: 5, deadBandL: 0.1 },
    }),
  );
  const salinity = readColumn(trace, 'salinity_ppt');
  const saltAt = (row: number) => salinity.at(row)! * densityKgPerM3(25, salinity.at(row)!);
  // Fresh water holds the level: a tenth of the 300 L in ten days leaves exp(−0.1) of the salt.
  expect(saltAt(-1) / saltAt(0)).toBeCloseTo(Math.exp(-0.1), 3);
});

it('a pump that gives nothing has no row in the ledger, unless it may run away', () => {
  const dosers = [{ name: 'soda', recipe: [], mlPerDay: 0 }];
  const rows = (faults: ReturnType<typeof newFault>[]) =>
    compile(quietTank({ dosers, faults })).ledger.map(({ id }) => id);
  expect(rows([])).not.toContain('stock1');
  expect(rows([newFault('doserOn', { day: 1, hour: 1, endsAfterH: 1, pump: 1 })])).toContain(
    'stock1',
  );
});

it('each device is called as its kind', () => {
  const all = quietTank({
    ...{ outflows: { skimmingLPerDay: 1, leakLPerDay: 1, spareL: 5 }, topOff: { reservoirL: 20 } },
    ...{ evaporation: { litresPerDay: 2 }, waterChanges: { continuousLPerDay: 2 } },
  });
  for (const kind of deviceKinds) {
    for (const { id } of kind.build(all, noFactors)) expect(id).toContain(kind.id);
  }
  const [ids, kinds] = [compile(all).devices.map(({ id }) => id), deviceKinds.map(({ id }) => id)];
  expect(kinds.filter((id) => !ids.some((one) => one.includes(id)))).toEqual(['dosers']);
});

it('new water that flows in all day is a litre for a litre', () => {
  const tank = quietTank({ waterChanges: { continuousLPerDay: 24 } });
  const [inflow] = continuousChange.build(tank, noFactors)[0]!.pipes;
  const perH = inflow!.perKg!.map((amount) => amount * inflow!.kgPerH);
  newWater(tank, 1).forEach((amount, i) => expect(perH[i]).toBeCloseTo(amount, 12));
  expect(solutionKg(inflow!.perKg!)).toBeCloseTo(1, 12);
});

const reservoir = (plan: Parameters<typeof quietTank>[0], from?: ReturnType<typeof stateAfter>) =>
  Array.from(readColumn(run(quietTank(plan), undefined, from).trace, 'reservoir_l'));

it('another hour for the refill counts from the moment at which it is set', () => {
  const plan = (refillHour: number, days: number) => ({
    ...{ days, start: { clockHour: 0 }, evaporation: { litresPerDay: 6 } },
    topOff: { reservoirL: 20, pumpLPerH: 3, deadBandL: 0.1, refillEveryDays: 1, refillHour },
  });
  const half = stateAfter(quietTank(plan(8, 1)));
  const litres = reservoir(plan(20, 2), half);
  const fullest = litres.indexOf(Math.max(...litres));
  expect(fullest).toBe(20);
});

it('a wrong mix takes the place of what stands in the reservoir at its moment', () => {
  const plan = (hour: number) =>
    run(
      quietTank({
        ...{ days: 1, start: { clockHour: 0 }, evaporation: { litresPerDay: 6 } },
        topOff: {
          ...{ reservoirL: 20, pumpLPerH: 3, deadBandL: 0.1, refillEveryDays: 7, refillHour: 23 },
          ...{ additive: 'sodiumCarbonate', gramsPerL: 1 },
        },
        faults: [newFault('strongMix', { day: 1, hour, endsAfterH: 10, times: 5 })],
      }),
    ).trace;
  const ends = (hour: number) => readColumn(plan(hour), 'alkalinity_dkh').at(-1)!;
  // From 2:00 on it is five times as strong; on the evening nothing of the day has changed.
  expect(ends(2)).toBeGreaterThan(ends(22) + 0.5);
  expect(readColumn(plan(2), 'reservoir_l')[3]).toBeGreaterThan(19.5);
});
