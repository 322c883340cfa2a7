import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { actIds, firstHourOf } from '../../shared/faults/firstHour';
import { batteryKLaPerH, scoopKLaPerH, usualHandAir } from '../../shared/faults/handAir';
import { newFault, newResponse } from '../../shared/scenario/newFault';
import type { Scenario } from '../../shared/scenario/schema';
import { oxygenKLaPerH, oxygenSaturationUmolPerKg } from '../../shared/seawater/oxygen';
import { readColumn } from '../../shared/trace/trace';
import type { ActBought } from '../../shared/verdict/bought';
import { newDosers } from '../../src/bench/newDosers';
import { boughtText, firstText } from '../../src/say/drill/boughtText';
import { paceText } from '../../src/say/drill/paceText';
import { firstFaultH } from '../../shared/verdict/drillOutcome';
import { lineOf } from '../../shared/verdict/lineResult';
import { oxygenLeft } from '../../shared/verdict/oxygenLeft';
import { run } from '../../workers/engine/run';
import { usualOptions } from '../../workers/engine/simulation';
import { actsBuy } from '../../workers/studies/drill/actsBuy';
import { runDrill } from '../../workers/studies/drill/drillRun';
import { rehearse } from '../../workers/studies/drill/rehearse';
import { patience, runsOf } from '../laws/size';
import { quietTank } from '../runs/quietTank';
import { scenarioFromFile } from '../runs/scenarioFiles';
import { anyFailure } from './anyFailure';

const goOn = async () => true;
const buys = async (scenario: Scenario, air = usualHandAir) =>
  (await actsBuy(scenario, air, usualOptions, goOn))!;
const actOf = (acts: readonly ActBought[], id: ActBought['act']) =>
  acts.find(({ act }) => act === id);
const SAME_H = 1 / 60;

const cut = (scenario: Scenario, own: Parameters<typeof newFault>[1] = {}): Scenario => ({
  ...scenario,
  days: 3,
  responses: [],
  faults: [newFault('powerCut', { day: 2, hour: 2, endsAfterH: 40, cooling: 'none', ...own })],
});

describe('what an act buys', () => {
  it(
    'is never less than nothing for the line it is told by, in no tank that this may be',
    async () => {
      let gained = 0;
      await fc.assert(
        fc.asyncProperty(anyFailure, async (scenario) => {
          const found = await buys(scenario);
          for (const one of found.acts) {
            const { act, gain, before, after } = one;
            const sooner = (a: number | undefined, b: number | undefined) =>
              (b ?? Infinity) < (a ?? Infinity) - Math.max(2 * SAME_H, 0.01 * (a ?? 0));
            for (const end of ['soonestH', 'asSetH', 'latestH'] as const) {
              expect(sooner(before[end], after[end]), `${act} ${end}`).toBe(false);
            }
            expect(found.withheld).not.toContain(act);
            if (gain !== 'nothing') gained++;
            if (gain === 'kept') expect(one.gainedH[1]).toBe(Infinity);
            if (gain === 'shorter') expect(one.outsideH[1]).toBeLessThan(one.outsideH[0]);
            const text = boughtText(one, found);
            expect(text).not.toMatch(/NaN|undefined|Infinity/);
            expect(text).not.toMatch(/buys nothing/);
            if (/ not within /.test(text)) expect(after.soonestH).toBeUndefined();
            // Told alike, to the digits that a keeper reads, is told to be little.
            if (gain === 'nothing')
              expect(text).toMatch(/^(changes little|keeps out what has not)/);
            expect(text).not.toMatch(/(?<![\d.])(\d[^;:]*) instead of \1(?![\d.])/);
            expect(text).not.toMatch(/: \S.* (after [^;]+); without it \1(;|$)/);
            const isAct = (actIds as readonly string[]).includes(act);
            if (gain === 'nothing') {
              expect(/common practice asks|^keeps out what has not/.test(text)).toBe(isAct);
            }
          }
          expect(firstText(found)).not.toMatch(/NaN|undefined|Infinity/);
        }),
        runsOf(120),
      );
      expect(gained).toBeGreaterThan(5);
    },
    patience * 2,
  );

  it.each(['drill-power-cut.json', 'limewater-holds.json', 'pico-tank.json'])(
    'in a power cut of %s is what two runs of the engine differ by',
    async (file) => {
      const scenario = cut(scenarioFromFile(file));
      const found = await buys(scenario);
      const fromH = firstFaultH(scenario);
      for (const [act, kLaPerH] of [
        ['batteryAir', batteryKLaPerH(scenario, usualHandAir)],
        ['scoop', scoopKLaPerH(scenario, usualHandAir)],
      ] as const) {
        const one = actOf(found.acts, act)!;
        expect(one.line.id).toBe('oxygenLow');
        const when = { day: 2, hour: 2, hours: 46 };
        const responses = [newResponse('batteryAir', { ...when, kLaPerH })];
        const after = (tank: Scenario) => {
          const { firstH } = lineOf(runDrill(tank).lines, 'oxygenLow');
          return firstH === undefined ? undefined : firstH - fromH;
        };
        const [without, withIt] = [after(scenario), after({ ...scenario, responses })];
        expect(one.before.asSetH).toBeCloseTo(without!, 9);
        if (withIt === undefined) expect(one.after.asSetH).toBeUndefined();
        else expect(one.after.asSetH).toBeCloseTo(withIt, 9);
        // What the tank as it is set gains lies within what all of them do.
        const gainedH = (withIt ?? Infinity) - without!;
        expect(one.gainedH[0]).toBeLessThanOrEqual(gainedH + 1e-9);
        expect(one.gainedH[1]).toBeGreaterThanOrEqual(gainedH - 1e-9);
      }
    },
  );

  it('tells of the first line of a power cut what the drill itself tells', async () => {
    const scenario = cut(scenarioFromFile('drill-power-cut.json'));
    const { first } = await buys(scenario);
    const [left] = oxygenLeft((await rehearse(scenario, usualOptions, goOn))!, scenario);
    expect(first!.line).toMatchObject({ id: 'oxygenLow', limit: left!.limitMgPerL });
    expect(first!.reach.soonestH).toBeCloseTo(left!.soonestH!, 6);
    expect(first!.reach.latestH).toBeCloseTo(left!.afterH!, 6);
  });

  it('of unplugging a stuck pump is the drill as it is noticed, against nobody noticing', async () => {
    const plan = { ...scenarioFromFile('drill-doser-stuck.json'), days: 3 };
    const stuck = { ...plan, faults: [newFault('doserOn', { day: 1, hour: 2, endsAfterH: 0.3 })] };
    const one = actOf((await buys(stuck)).acts, 'unplugDoser')!;
    expect([one.line.id, one.gain]).toEqual(['phHigh', 'kept']);
    const alone = { ...plan, faults: [newFault('doserOn', { day: 1, hour: 2, endsAfterH: 70 })] };
    expect(one.before.asSetH).toBeCloseTo(lineOf(runDrill(alone).lines, 'phHigh').firstH! - 2, 9);
    expect(lineOf(runDrill(stuck).lines, 'phHigh').firstH).toBeUndefined();
  });

  it('is not told of acts for hands and eyes, and all that the engine can do of the rest', async () => {
    const plan = scenarioFromFile('limewater-holds.json');
    const siphon = { ...plan, days: 3, faults: [newFault('siphon', { day: 2, hour: 2 })] };
    const { acts, withheld } = await buys(siphon);
    const { first, then } = firstHourOf(siphon, false);
    const told = [...acts.map(({ act }) => act), ...withheld];
    expect(told).toEqual(expect.arrayContaining(['liftHose', 'aerate', 'plainWater']));
    for (const act of told) expect([...first, ...then, 'carbonatedWater']).toContain(act);
    expect(told).not.toContain('measurePh');
  });

  it('is withheld where aerating draws in air that is worse than none', async () => {
    // Open windows let the room fall as slowly as it rose: meanwhile more air is more of its CO2.
    const tank = quietTank({ days: 3, tank: { alkalinityDkh: 8 }, gas: { kLaPerH: 0.2 } });
    const stale = newFault('roomCo2', {
      day: 2,
      hour: 2,
      endsAfterH: 3,
      co2Ppm: 9000,
      riseHours: 10,
    });
    const { acts, withheld } = await buys({ ...tank, faults: [stale] });
    expect(withheld).toContain('aerate');
    expect(acts.map(({ act }) => act)).not.toContain('aerate');
  });
});

describe('battery air', () => {
  const breathedMmolPerLPerDay = 1.2;
  const tank = quietTank({
    gas: { kLaPerH: 0.5 },
    oxygen: { respirationMmolPerLPerDay: breathedMmolPerLPerDay },
    days: 4,
  });
  const { tempC, salinityPractical, volumeL } = tank.tank;
  const kgPerL = 1.02334;
  const saturated = (oxygenSaturationUmolPerKg(tempC, salinityPractical) * kgPerL * 31.998) / 1000;
  const breathedMgPerLPerH = (breathedMmolPerLPerDay * 31.998) / 24;

  it('brings what hand arithmetic says of its bubbles, and of a jug', () => {
    // 120 L of air an hour hold 1.026 mol; 3 % a metre over 0.6 m; 300 L hold 63.5 mmol.
    const { surfaceM2 } = tank.evaporation;
    const depthM = volumeL / 1000 / surfaceM2;
    const perH = (120 * 0.00855 * 0.03 * depthM) / ((saturated / 31998) * volumeL);
    const byHand = perH / oxygenKLaPerH(1, tempC);
    expect(batteryKLaPerH(tank, usualHandAir) / byHand).toBeCloseTo(1, 4);
    // 3 L a minute, a quarter of what is missing taken up: 45 L an hour of 300 L.
    expect(scoopKLaPerH(tank, usualHandAir)).toBeCloseTo(45 / 300 / oxygenKLaPerH(1, tempC), 12);
  });

  it('holds oxygen where what comes in is what is breathed, and nears it by hand’s time constant', () => {
    const kLaPerH = 0.4;
    const own = cut(tank, { gasPercent: 0 });
    const responses = [newResponse('batteryAir', { day: 2, hour: 2, hours: 60, kLaPerH })];
    const mgPerL = readColumn(run({ ...own, days: 4, responses }).trace, 'oxygen_mg_l');
    const perH = oxygenKLaPerH(kLaPerH, tempC);
    const steady = saturated - breathedMgPerLPerH / perH;
    const at = (h: number) => steady + (mgPerL[26]! - steady) * Math.exp(-perH * h);
    for (const h of [1, 4, 12, 39]) expect(mgPerL[26 + h]! / at(h)).toBeCloseTo(1, 4);
  });

  it('does as long as it lasts what it does with the power on as well: it comes on top', () => {
    const responses = [newResponse('batteryAir', { day: 1, hour: 0, hours: 24, kLaPerH: 0.3 })];
    const [both, alone] = [
      run({ ...tank, days: 1, responses }),
      run({ ...tank, days: 1, gas: { ...tank.gas, kLaPerH: 0.8 } }),
    ].map(({ trace }) => readColumn(trace, 'oxygen_mg_l')[23]!);
    expect(both).toBeCloseTo(alone!, 2);
  });
});

describe('by hand', () => {
  const RESPIRED = 0.6;
  const kLaPerH = 2;
  const own = (oxygen: object = {}) =>
    cut(quietTank({ gas: { kLaPerH }, oxygen }), { gasPercent: 0 });
  const { tempC, salinityPractical } = own().tank;
  const saturated = (oxygenSaturationUmolPerKg(tempC, salinityPractical) * 1.02334 * 31.998) / 1000;
  const perH = (mmolPerLPerDay: number) => (mmolPerLPerDay * 31.998) / 24;
  /** Oxygen as the power goes: breath and air in balance. */
  const startOf = (mmolPerLPerDay: number) =>
    saturated - perH(mmolPerLPerDay) / oxygenKLaPerH(kLaPerH, tempC);
  const untilFour = (mmolPerLPerDay: number) =>
    (startOf(mmolPerLPerDay) - 4) / perH(mmolPerLPerDay);

  it.each([
    ['the word for stocking, half as much more or less', {}, RESPIRED, 1.5],
    ['what was measured, a sixth', { respirationMmolPerLPerDay: 0.9 }, 0.9, 1.15],
  ])('oxygen’s range in a closed tank is that of %s', async (_, oxygen, mmol, times) => {
    const scenario = own(oxygen);
    const [left] = oxygenLeft((await rehearse(scenario, usualOptions, goOn))!, scenario);
    expect(left!.soonestH! / untilFour(mmol * times)).toBeCloseTo(1, 3);
    expect(left!.afterH! / untilFour(mmol / times)).toBeCloseTo(1, 3);
    const { first } = await buys(scenario);
    expect(first!.reach.asSetH! / untilFour(mmol)).toBeCloseTo(1, 3);
  });

  it('battery air is believed by half where the time is short', async () => {
    const mmol = 1.2;
    const scenario = own({ stocking: 'crowded' });
    const one = actOf((await buys(scenario)).acts, 'batteryAir')!;
    const k = oxygenKLaPerH(batteryKLaPerH(scenario, usualHandAir) / 2, tempC);
    const steady = saturated - perH(mmol * 1.5) / k;
    const hours = -Math.log((4 - steady) / (startOf(mmol * 1.5) - steady)) / k;
    expect(one.after.soonestH! / hours).toBeCloseTo(1, 3);
  });

  it('a wrapped tank takes twice as long to its limit', async () => {
    const tank = quietTank({ tank: { tempC: 26 }, evaporation: { airTempC: 18 }, days: 3 });
    const scenario = cut(
      { ...tank, gas: { ...tank.gas, kLaPerH: 4 } },
      {
        ...{ cooling: 'own', coolingHours: 10, gasPercent: 100 },
      },
    );
    const one = actOf((await buys(scenario)).acts, 'keepWarm')!;
    const hours = 10 * Math.log((26 - 18) / (24 - 18));
    expect([one.line.id, one.gain]).toEqual(['temperatureLow', 'later']);
    expect(one.before.asSetH).toBeCloseTo(hours, 3);
    expect(one.after.asSetH).toBeCloseTo(2 * hours, 3);
    for (const gainedH of one.gainedH) expect(gainedH).toBeCloseTo(hours, 3);
  });

  it('aerating and changing water are the runs with kLa 4, and with two tenths half a day apart', async () => {
    const limed = { ...scenarioFromFile('limewater-holds.json'), days: 4, responses: [] };
    const topOff = { ...limed.topOff, additive: 'none' as const, gramsPerL: 0 };
    const plan = { ...limed, topOff };
    const over = { ...plan, faults: [newFault('overdose', { day: 2, hour: 2, grams: 50 })] };
    const { acts } = await buys(over);
    const outside = (responses: Scenario['responses']) =>
      lineOf(runDrill({ ...over, responses }).lines, 'phHigh').outsideH;
    const at = { day: 2, hour: 2.05 };
    const aerated = outside([newResponse('aerate', { ...at, hours: 80, kLaPerH: 4 })]);
    expect(actOf(acts, 'aerate')!.outsideH[1]).toBeCloseTo(aerated, 2);
    const tenth = (hour: number, percent = 10) =>
      newResponse('extraChange', { day: 2, hour, percent });
    const changed = outside([tenth(2.05), tenth(14.05)]);
    expect(actOf(acts, 'changeInSteps')!.outsideH[1]).toBeCloseTo(changed, 2);
    // An hour later would show, and so would a twentieth more of the water.
    expect(Math.abs(changed - outside([tenth(3.05), tenth(14.05)]))).toBeGreaterThan(0.01);
    expect(Math.abs(changed - outside([tenth(2.05, 15), tenth(14.05)]))).toBeGreaterThan(0.01);
  });
});

it('what is passed first and harms nobody is followed by what comes before harm', async () => {
  const plan = { ...scenarioFromFile('limewater-holds.json'), days: 4, responses: [] };
  const stuck = { ...plan, faults: [newFault('topOffOn', { day: 2, hour: 2, endsAfterH: 6 })] };
  const { first } = await buys(stuck);
  const alone = { ...stuck, faults: [newFault('topOffOn', { day: 2, hour: 2, endsAfterH: 90 })] };
  const { lines } = runDrill(alone);
  const afterH = (id: string) => lineOf(lines, id).firstH! - firstFaultH(alone);
  expect([first!.line.id, first!.graver!.line.id]).toEqual(['salinityLow', 'phHigh']);
  expect(first!.reach.asSetH).toBeCloseTo(afterH('salinityLow'), 6);
  expect(first!.graver!.reach.asSetH).toBeCloseTo(afterH('phHigh'), 6);
});

it('too warm: aerating is not talked down, and what the time rests on is said', async () => {
  const plan = { ...scenarioFromFile('limewater-holds.json'), days: 4, responses: [] };
  const hot = newFault('heater', { day: 2, hour: 2, endTempC: 31, degreesPerH: 0.5 });
  const found = await buys({ ...plan, faults: [hot] });
  const one = actOf(found.acts, 'aerate')!;
  expect([one.line.quantity, one.gain]).toEqual(['temperature', 'nothing']);
  expect(boughtText(one, found)).toMatch(/^changes little of what was watched.*for the oxygen$/);
  expect(paceText([hot], plan.tank.tempC)).toMatch(/0\.5 °C an hour, up to 31/);
  expect(paceText([newFault('powerCut')], plan.tank.tempC)).toBe('');
});

it('a pump that has emptied its bottle: unplugging it is not talked down', async () => {
  const plan = { ...scenarioFromFile('limewater-holds.json'), days: 4, responses: [] };
  const dosers = newDosers[0]!.make.map((doser) => ({ ...doser, mLPerDay: 22.4 }));
  const ran = newFault('doserOn', { day: 2, hour: 2, endsAfterH: 6 });
  const found = await buys({ ...plan, dosers, faults: [ran] });
  const one = actOf(found.acts, 'unplugDoser')!;
  expect(one.gain).toBe('nothing');
  expect(boughtText(one, found)).toMatch(/^keeps out what has not run in yet: .*Begun after 6 h/);
});
