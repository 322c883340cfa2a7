import { SCENARIO_VERSION } from '../../shared/scenario/schema';

/** A good file in few lines, to be spoilt. */
export const good = {
  type: 'paper-reef/scenario',
  version: 4,
  title: 'a tank',
  days: 3,
  tank: { volumeL: 200, alkalinityDkh: 8 },
};

export interface Bad {
  readonly name: string;
  readonly text: string;
  /** Where it is wrong, and what the way out must say. */
  readonly problems: readonly (readonly [path: string, wayOut: RegExp])[];
}

type Part = Record<string, unknown>;
const json = (over: Part) => JSON.stringify({ ...good, ...over });
const withTank = (over: Part) => json({ tank: { ...good.tank, ...over } });

export const badScenarios: readonly Bad[] = [
  {
    name: 'a volume in gallons',
    text: json({ tank: { volumeGal: 50, alkalinityDkh: 8 } }),
    problems: [
      ['tank.volumeGal', /'volumeL', a number in L/],
      ['tank.volumeL', /Add it/],
    ],
  },
  {
    name: 'a missing field',
    text: json({ tank: { volumeL: 200 } }),
    problems: [['tank.alkalinityDkh', /Add it/]],
  },
  {
    name: 'an unknown field',
    text: json({ colour: 'blue' }),
    problems: [['colour', /Remove it, or correct its name/]],
  },
  {
    name: 'an unknown additive',
    text: json({ additions: [{ additive: 'chalk', grams: 1 }] }),
    problems: [['additions[0].additive', /Change it to what is expected/]],
  },
  {
    name: 'a file of a later version',
    text: json({ version: SCENARIO_VERSION + 1 }),
    problems: [['version', /newer Paper Reef: update/]],
  },
  {
    name: 'another kind of file',
    text: JSON.stringify({ name: 'package', version: 2 }),
    problems: [['type', /Choose a scenario file/]],
  },
  {
    name: 'ten megabytes of junk',
    text: 'x'.repeat(10_000_000),
    problems: [['(the whole file)', /too long for a scenario/]],
  },
  {
    name: 'NaN in the text',
    text: JSON.stringify(good).replace('200', 'NaN'),
    problems: [['(the whole file)', /JSON knows no NaN/]],
  },
  {
    name: 'a negative volume',
    text: withTank({ volumeL: -200 }),
    problems: [['tank.volumeL', /Give the number for your tank/]],
  },
  {
    name: 'a number beyond all numbers',
    text: JSON.stringify(good).replace('200', '1e999'),
    problems: [['tank.volumeL', /Give the number for your tank/]],
  },
  {
    name: 'a trial of a billion days',
    text: json({ days: 1e9 }),
    problems: [['days', /Give the number for your tank/]],
  },
  {
    name: 'a specific gravity in place of a salinity',
    text: withTank({ salinityPractical: 1.026 }),
    problems: [['tank.salinityPractical', /as salinity that is 34\.\d/]],
  },
  {
    name: 'numbers in quotes',
    text: withTank({ volumeL: '200' }),
    problems: [['tank.volumeL', /convert to L and drop the quotes/]],
  },
  {
    name: 'limits the wrong way round',
    text: json({ limits: { phLowNbs: 8.6, phHighNbs: 7.8 } }),
    problems: [['limits.phLow…', /Swap them/]],
  },
  {
    name: 'several mistakes at once',
    text: json({ days: -1, tank: { volumeL: 'big', alkalinityDkh: 99 }, food: { gramsPerDy: 1 } }),
    problems: [
      ['days', /./],
      ['tank.volumeL', /drop the quotes/],
      ['tank.alkalinityDkh', /./],
      ['food.gramsPerDy', /'gramsPerDay', a number in g\/day/],
    ],
  },
];
