import { describe, expect, it } from 'vitest';
import { firstHourOf, type ActId } from '../../shared/faults/firstHour';
import { faultIds, type FaultId } from '../../shared/scenario/faults';
import { newFault } from '../../shared/scenario/newFault';
import { scenarioOf } from '../../shared/scenario/write';
import { en } from '../../shared/words/firstHour/en';
import { actPlans, actsFromH } from '../../workers/studies/drill/actPlans';

const NO_AIR = { handAir: { airLPerMin: 0, scoopLPerMin: 0 }, airShare: 0 };

const tank = scenarioOf({
  type: 'paper-reef/scenario',
  version: 4,
  title: 'a tank where things break',
  days: 4,
  tank: { volumeL: 250, alkalinityDkh: 8.5, tempC: 25.5 },
});
const hourOf = (faults: readonly FaultId[], wetFloor = false, endTempC = 31) =>
  firstHourOf({ ...tank, faults: faults.map((kind) => newFault(kind, { endTempC })) }, wetFloor);

/** The first act of each failure (common practice, as the design of this project lists them). */
const firstActs: Readonly<Record<FaultId, ActId>> = {
  topOffOn: 'unplugTopOff',
  topOffOff: 'fillByHand',
  sensorLow: 'unplugTopOff',
  siphon: 'liftHose',
  strongMix: 'unplugTopOff',
  slurry: 'unplugTopOff',
  doserOn: 'unplugDoser',
  doserOff: 'measureAlkalinity',
  doserRate: 'unplugDoser',
  wrongNewWater: 'stopAdding',
  heater: 'unplugHeater',
  powerCut: 'moveWater',
  roomCo2: 'leaveRoom',
  overdose: 'stopAdding',
};

/** Acts that nobody can do both of. */
const opposed: readonly (readonly [ActId, ActId])[] = [
  ['topOffStays', 'unplugTopOff'],
  ['topOffStays', 'liftHose'],
  ['topOffStays', 'topOffStaysOff'],
  ['topOffStays', 'breaker'],
  ['keepWarm', 'coolSlowly'],
  ['warmSlowly', 'coolSlowly'],
  ['aerate', 'moveWater'],
  ['plainWater', 'fillByHand'],
];

const pairs = faultIds.flatMap((a) => faultIds.filter((b) => b !== a).map((b) => [a, b] as const));

it('who has poured in too much unplugs what goes on bringing it', () => {
  const over = { ...tank, faults: [newFault('overdose')] };
  const dosers = [{ name: 'soda', recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 50 }] }];
  const dosed = scenarioOf({ ...over, dosers: dosers.map((one) => ({ ...one, mlPerDay: 40 })) });
  const topOff = { additive: 'calciumHydroxide', gramsPerL: 1.2, reservoirL: 20 };
  expect(firstHourOf(over, false).first).toEqual(['stopAdding']);
  expect(firstHourOf(dosed, false).first).toEqual(['unplugDoser', 'stopAdding']);
  const limed = firstHourOf(scenarioOf({ ...over, topOff }), false);
  expect(limed.first).toEqual(['unplugTopOff', 'stopAdding']);
  expect(limed.then).toContain('plainWater');
  const stopped = actPlans.unplugDoser!(dosed, dosed, NO_AIR);
  expect(stopped.faults.map(({ kind }) => kind)).toEqual(['overdose', 'doserOff']);
});

describe('a first hour', () => {
  it.each(faultIds)('of %s begins with its own act', (kind) => {
    expect(hourOf([kind]).first[0]).toBe(firstActs[kind]);
  });

  it('of a heater that lets the tank go cold warms it, and unplugs nothing', () => {
    const { first, then } = hourOf(['heater'], false, 18);
    expect(first).toEqual(['warmSlowly']);
    expect([...first, ...then]).not.toContain('unplugHeater');
  });

  it('of two failures keeps the first act of each that can still be done, and opposes none', () => {
    expect(pairs).toHaveLength(faultIds.length * (faultIds.length - 1));
    for (const pair of pairs) {
      for (const wet of [false, true]) {
        for (const endTempC of [18, 31]) {
          const { first, then, never } = hourOf(pair, wet, endTempC);
          const acts = [...first, ...then];
          expect(new Set(acts).size, pair.join()).toBe(acts.length);
          for (const [a, b] of opposed) {
            expect(
              [a, b].every((act) => acts.includes(act)),
              `${pair.join()}: ${a}, ${b}`,
            ).toBe(false);
          }
          for (const kind of pair) {
            const [act] = hourOf([kind], false, endTempC).first;
            const isWarming = act === 'warmSlowly' && pair.includes('powerCut');
            if (!isWarming) expect(acts, pair.join()).toContain(act);
          }
          expect(acts.filter((act) => never.includes(act))).toEqual([]);
        }
      }
    }
  });

  it('puts people before animals before water', () => {
    for (const pair of pairs) {
      const { first, never } = hourOf(pair, true);
      expect(first[0]).toBe('breaker');
      expect(never).toContain('noTank');
      const [leave, move] = [first.indexOf('leaveRoom'), first.indexOf('moveWater')];
      if (leave >= 0 && move >= 0) expect(leave).toBeLessThan(move);
      if (move >= 0)
        expect(first.slice(0, move)).toEqual(leave >= 0 ? ['breaker', 'leaveRoom'] : ['breaker']);
    }
  });

  it('stops what pours in before it makes up for what is missing', () => {
    expect(hourOf(['topOffOff', 'topOffOn']).first).toEqual(['unplugTopOff', 'fillByHand']);
    expect(hourOf(['topOffOff', 'siphon']).first).toEqual(['liftHose', 'fillByHand']);
  });

  it('never unplugs the top-off for what that does not stop, and never reaches for acid', () => {
    for (const kind of ['siphon', 'doserOn', 'powerCut', 'roomCo2', 'heater'] as const) {
      expect(hourOf([kind]).first).not.toContain('unplugTopOff');
    }
    for (const kind of faultIds) {
      const said = [...hourOf([kind]).first, ...hourOf([kind]).then].map((act) => en.acts[act]);
      expect(said.join(' ')).not.toMatch(/acid|\bice\b/i);
    }
  });
});

it('what is done begins as the power goes, and else once the last failure is noticed', () => {
  const cut = newFault('powerCut', { day: 2, hour: 2, endsAfterH: 9 });
  const stuck = newFault('doserOn', { day: 2, hour: 3, endsAfterH: 4 });
  const warm = newFault('heater', { day: 2, hour: 1, endsAfterH: 2 });
  const fromH = (...faults: (typeof cut)[]) => actsFromH({ ...tank, faults });
  expect([fromH(cut), fromH(stuck, warm), fromH(cut, stuck)]).toEqual([26, 31, 31]);
});
