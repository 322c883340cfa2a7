import { beforeAll, describe, expect, it } from 'vitest';
import { emptyLog } from '../../shared/log/tankLog';
import { scenarioOf } from '../../shared/scenario/write';
import { tankAnswer, type TankAnswer } from '../../src/cli/tankAnswer';
import { awayTold, firstSentence, seasonTold, turnTold } from '../../src/cli/tankSentences';
import { openingPlans } from '../../src/store/plans';
import { newTank } from '../../src/store/tanks';
import { patience } from '../laws/size';

const plan = scenarioOf({
  tank: { volumeL: 250, alkalinityDkh: 8 },
  corals: { useDkhPerDay: 1 },
  dosers: [
    { name: 'soda', recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 60 }], mlPerDay: 60 },
    {
      name: 'calcium',
      recipe: [{ additive: 'calciumChlorideDihydrate', gramsPerL: 83 }],
      mlPerDay: 60,
    },
  ],
});

/** A week of tests of a tank that wants alkalinity, and calcium and magnesium beside it. */
const log = {
  ...emptyLog,
  readings: [8, 7.9, 7.8, 7.8, 7.7, 7.6, 7.5].map((alkalinityDkh, i) => ({
    ...{ at: `2026-03-0${i + 1}T10:30`, alkalinityDkh },
    ...(i % 3 === 0 && { calciumMgPerL: 390 - i, magnesiumMgPerL: 1190 - i }),
    ...(i % 3 === 0 && { salinityPractical: 35 }),
  })),
};

/** Everything that a tank is told to have poured into it, panel by panel. */
const panels = (told: TankAnswer): Record<string, string> => ({
  'what to turn': turnTold(told).join(' '),
  'getting there': firstSentence(told),
  season: seasonTold(told).join(' '),
});

const grams = /\d g (of |magnesium|calcium|sodium)|mL a day|\bg\/L/;
const namesGrams = (text: string) => grams.test(text);

describe('before anything is poured', () => {
  let told: TankAnswer;
  beforeAll(async () => {
    const tank = { ...newTank('tank-1', 'A basin at Sedge Holm', openingPlans(plan)), log };
    told = await tankAnswer(tank, '2026-03-07T20:00', { days: 3, visitDays: 0 });
  }, patience);

  it('what a fresh reading asks for is said in grams, by every panel', () => {
    for (const [panel, text] of Object.entries(panels(told))) {
      expect([panel, namesGrams(text)]).toEqual([panel, true]);
      expect([panel, text]).not.toEqual([panel, expect.stringContaining('overdue')]);
    }
  });

  it('a test comes first where the next is overdue: what it would have been is said as that', () => {
    for (const now of ['2026-03-29T20:00', '2026-07-01T08:00']) {
      for (const [panel, text] of Object.entries(panels({ ...told, now }))) {
        const test = text.search(/\btest (it )?(first|before|with alkalinity)/i);
        const amount = text.search(grams);
        expect([panel, test >= 0]).toEqual([panel, true]);
        expect([panel, amount < 0 || test < amount]).toEqual([panel, true]);
      }
    }
  });

  it('a test comes first where what runs was turned since: nothing is poured twice', () => {
    const [soda, calcium] = plan.dosers;
    const before = { ...plan, dosers: [{ ...soda!, mlPerDay: 40 }, calcium!] };
    const turned = { ...told, ran: [{ until: '2026-03-07T19:00', plan: before }] };
    for (const [panel, text] of Object.entries(panels(turned))) {
      expect([panel, text]).toEqual([panel, expect.stringMatching(/Test first/)]);
      expect([panel, text.match(grams)?.[0]]).toEqual([panel, undefined]);
    }
  });

  it('nobody leaves by an old reading: that it is old, and to test before leaving, is said', () => {
    const old = 'is of 7 March, and the next test is overdue';
    const text = (now: string) => awayTold({ ...told, now }).join(' ');
    expect(text('2026-03-07T20:00')).not.toContain(old);
    expect(text('2026-03-29T20:00')).toContain(old);
    expect(text('2026-03-29T20:00')).toContain('Test before you leave.');
  });

  it('an old reading of calcium is said before what is added by it', () => {
    const texts = panels({ ...told, now: '2026-03-29T20:00' });
    expect(texts.season).toMatch(/Calcium was last read 22 days ago: test it before you add/);
  });

  it('what moved the water at once is looked for first, where nobody noted it', async () => {
    const readings = log.readings.map((reading, i) =>
      i < 5 ? reading : { ...reading, alkalinityDkh: reading.alkalinityDkh + 2 },
    );
    const tank = {
      ...newTank('tank-1', 'A basin at Sedge Holm', openingPlans(plan)),
      ...{ log: { ...log, readings } },
    };
    const leapt = await tankAnswer(tank, '2026-03-07T20:00', { days: 3, visitDays: 0 });
    expect(awayTold(leapt).join(' ')).toMatch(/may do so again: find it before you leave/);
    for (const [panel, text] of Object.entries(panels(leapt))) {
      const first = text.search(/pour nothing in yet/);
      expect([panel, first]).not.toEqual([panel, -1]);
      const named = text.search(grams);
      if (named >= 0) expect([panel, first < named]).toEqual([panel, true]);
    }
  });

  it('readings that rise with nothing dosed begin no plan', async () => {
    const readings = [8, 8.4, 8.8, 9.3, 9.7, 10.2, 10.6].map((alkalinityDkh, i) => ({
      ...{ at: `2026-03-0${i + 1}T10:30`, alkalinityDkh },
    }));
    const bare = openingPlans({ ...plan, dosers: [] });
    const tank = { ...newTank('tank-1', 'A basin at Sedge Holm', bare), log: { ...log, readings } };
    const rises = await tankAnswer(tank, '2026-03-07T20:00', { days: 3, visitDays: 0 });
    expect(turnTold(rises)[0]).toMatch(/do not tell what the tank uses/);
    expect(firstSentence(rises)).toMatch(/do not tell what the tank uses/);
    expect(awayTold(rises).join(' ')).toMatch(/find out why before you leave/);
  });
});
