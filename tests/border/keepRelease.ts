import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { logRows } from '../../shared/log/csv/exportLog';
import { emptyLog } from '../../shared/log/tankLog';
import { withValue } from '../../shared/scenario/change';
import { writeLink } from '../../shared/scenario/link';
import { scenarioText } from '../../shared/scenario/write';
import { csvText } from '../../src/files/csvText';
import { example } from '../../src/store/example';
import { everythingText } from '../../src/store/everything';
import { openingPlans, replacing, withPlan } from '../../src/store/plans';
import { runningBy } from '../../src/bench/runsBy';
import { newTank, type Tank } from '../../src/store/tanks';
import { scenarioFromFile } from '../runs/scenarioFiles';

/** What this version keeps, for `releases/`: `npx tsx tests/border/keepRelease.ts`, once a release. */
const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
const folder = new URL(`./releases/${version}/`, import.meta.url);
mkdirSync(folder);
const write = (name: string, text: string) => writeFileSync(new URL(name, folder), text);

const opened = openingPlans(example);
const stronger = withValue(example, ['topOff', 'gramsPerL'], 1.15);
const trial = withValue(stronger, ['corals', 'useDkhPerDay'], 1.3);
const tried = replacing(opened, opened.selected, { scenario: trial });
const pump = scenarioFromFile('beyond-limewater.json');
const running = runningBy(tried, withValue(example, ['days'], 45), '2026-03-04T10:30');
const bench = withPlan(running, pump, 'With a pump');

const readings = [
  { at: '2026-03-01T10:30', alkalinityDkh: 8.4, calciumMgPerL: 420, test: 'drops', lot: 'B7' },
  { at: '2026-03-02T10:30', alkalinityDkh: 8.1 },
  {
    ...{ at: '2026-03-03T10:30', alkalinityDkh: 8.2, notes: 'half in the evening' },
    ...{ additive: 'sodiumBicarbonate' as const, grams: 12 },
  },
  { at: '2026-03-04T10:30', alkalinityDkh: 7.8 },
];
const tank: Tank = {
  ...newTank('tank-1', 'The lagoon of the field school', bench),
  log: { ...emptyLog, readings, targetDkh: 8.2, scoopG: 4.5 },
  edition: crypto.randomUUID(),
};
const raceway: Tank = {
  ...newTank('tank-2', 'Raceway at Sallow Creek', openingPlans(pump)),
  log: { ...emptyLog, readings: readings.slice(0, 1) },
};
const link = await writeLink(bench.plans.slice(1));
if (!link.ok) throw new RangeError(link.message);

write('tank.json', `${JSON.stringify(tank, null, 1)}\n`);
write(
  'everything.json',
  everythingText({ tanks: [tank, raceway], preferences: { theme: 'dark', volume: 'US gal' } }),
);
write('plan.json', scenarioText(pump));
write('link.txt', `${link.fragment}\n`);
write('log.csv', await csvText(logRows(readings)));
