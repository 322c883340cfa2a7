import { plainGrowth } from '../../../workers/engine/firstDay';
import { describe, expect, it } from 'vitest';
import { gasExchange } from '../../../shared/processes/gasExchange';
import { meqPerLFromDkh } from '../../../shared/seawater';
import { patience } from '../../laws/size';
import { misses } from '../../reference/check';
import { quietTank } from '../quietTank';
import { hydroxideUptakeChecks } from './checks/hydroxideUptake';
import { calciumReactorChecks, reactorTank } from './checks/calciumReactor';
import { refugiumChecks, refugiumTank } from './checks/refugium';
import { tableSaltChecks } from './checks/tableSalt';
import { changeOver, equivalents, mol, onlyTank } from './onlyTank';
import { onlyView } from './onlyView';

describe('carbon dioxide from the air', () => {
  it(
    'comes in at 0.79 mol for each equivalent of hydroxide, inside the published 0.7 to 0.9',
    () => {
      expect(hydroxideUptakeChecks()).toHaveLength(6);
      expect(misses(hydroxideUptakeChecks())).toEqual([]);
    },
    patience,
  );

  it('crosses a still surface faster by what reacts in its film, if that is switched on', () => {
    const rate = (enhancement: 'on' | 'off', surfaceM2: number, phTotal: number) => {
      const scenario = quietTank({
        gas: { kLaPerH: 0.1, enhancement },
        evaporation: { surfaceM2 },
      });
      const settings = gasExchange.settings({ ...plainGrowth, scenario, volumeL: 300 })!;
      return gasExchange.rate(
        onlyView({ volumeL: 300, kLaPerH: 0.1, hTotal: 10 ** -phTotal }),
        settings,
      );
    };
    // 0.1 1/h in 0.3 m³ through 1.5 m² is 0.02 m/h; through 0.3 m², 0.1 m/h.
    expect(rate('on', 1.5, 8.1) / rate('off', 1.5, 8.1)).toBeCloseTo(2.1, 1);
    expect(rate('on', 1.5, 9) / rate('off', 1.5, 9)).toBeCloseTo(4.2, 1);
    expect(rate('on', 0.3, 8.6) / rate('off', 0.3, 8.6)).toBeCloseTo(1.1, 1);
  });
});

describe('a calcium reactor', () => {
  it(
    'brings drip × (effluent − tank), and makes a closed tank into its effluent in the end',
    () => {
      expect(calciumReactorChecks()).toHaveLength(6);
      expect(misses(calciumReactorChecks())).toEqual([]);
    },
    patience,
  );

  it('brings calcium with alkalinity, more carbon than that, and lowers pH', () => {
    const tank = reactorTank();
    const before = tank.view.phNbs;
    const gain = changeOver(tank, 24, {
      ...{ eq: equivalents, ca: (t) => mol(t, 'Ca'), dic: (t) => mol(t, 'DIC') },
    });
    expect(gain.ca / gain.eq).toBeCloseTo(0.5, 9);
    expect(gain.dic).toBeGreaterThan(gain.ca * 2);
    expect(tank.view.phNbs).toBeLessThan(before - 0.5);
    expect(tank.books.pool('reactorMedia')).toBeCloseTo(-gain.ca, 9);
  });

  it('takes nothing from a tank that is stronger than its effluent', () => {
    const tank = onlyTank({
      tank: { alkalinityDkh: 12 },
      calciumReactor: { dripLPerH: 5, effluentDkh: 8, effluentPhNbs: 7 },
    });
    const change = changeOver(tank, 24, { eq: equivalents, dic: (t) => mol(t, 'DIC') });
    expect(change.eq).toBe(0);
    expect(change.dic).toBeGreaterThan(0);
  });
});

describe('a refugium', () => {
  it(
    'fixes in its hours what was typed for a day, whenever they are',
    () => {
      expect(refugiumChecks()).toHaveLength(5);
      expect(misses(refugiumChecks())).toEqual([]);
    },
    patience,
  );

  it('rests outside its hours but for the half hour in which its light comes and goes', () => {
    const tank = refugiumTank(12, 6);
    const dic = () => mol(tank, 'DIC');
    const start = dic();
    const at = (clockHour: number) => {
      tank.advanceTo(clockHour - tank.plan.scenario.start.clockHour);
      return dic();
    };
    expect(at(11.5)).toBe(start);
    expect(at(14)).toBeLessThan(start);
    const dusk = at(18.5);
    expect(at(23)).toBe(dusk);
  });
});

it('leaves 20.8 mg/L of table salt for each dKH of a two-part pair', () => {
  expect(tableSaltChecks()).toHaveLength(1);
  expect(misses(tableSaltChecks())).toEqual([]);
  expect(meqPerLFromDkh(1) * 58.443).toBeCloseTo(20.84, 2);
});

describe('food', () => {
  it('without carbon still brings its nitrogen and phosphorus', () => {
    const food = { gramsPerDay: 5, carbonPercent: 0, releasedPercent: 100 };
    const tank = onlyTank({ days: 1, food });
    const change = changeOver(tank, 24, {
      tan: (t) => mol(t, 'TAN'),
      po4: (t) => mol(t, 'PO4'),
      dic: (t) => mol(t, 'DIC'),
    });
    // 6 % nitrogen and 1 % phosphorus of 5 g, by atomic weights.
    expect(change.tan).toBeCloseTo(0.3 / 14.007, 6);
    expect(change.po4).toBeCloseTo(0.05 / 30.974, 6);
    expect(change.dic).toBeCloseTo(0, 12);
  });
});

describe('a skimmer that draws outside air', () => {
  const airOf = (aeration: 'skimmer' | 'skimmerOutsideAir', outsideAirPercent: number) =>
    onlyTank({ room: { co2Ppm: 1225 }, gas: { aeration, outsideAirPercent } }).view.pco2AirUatm;

  it('mixes outdoor air of 425 ppm into what the water breathes', () => {
    const room = airOf('skimmer', 50);
    expect(airOf('skimmerOutsideAir', 50) / room).toBeCloseTo(825 / 1225, 9);
    expect(airOf('skimmerOutsideAir', 0)).toBe(room);
  });
});
