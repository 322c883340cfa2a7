import { parseArgs } from 'node:util';
import { isLocalTime } from '../../shared/log/localTime';
import { MOST_AWAY_DAYS } from '../../shared/log/tankLog';
import { nowLocal } from '../store/nowLocal';
import { jsonText } from './json';
import { readTanks } from './readTanks';
import { tankAnswer, type TankAnswer } from './tankAnswer';
import { tankJson } from './tankJson';
import { tankText } from './tankSentences';
import { endWithReader, print, readText, refuse, refuseFile } from './terminal';

const USAGE =
  'npm run --silent answer -- TANK.json [--json] [--tank NAME] [--now 2026-03-04T10:30] [--away DAYS [--visits DAYS]]';

function readArguments() {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: {
        json: { type: 'boolean', default: false },
        tank: { type: 'string' },
        now: { type: 'string', default: nowLocal() },
        away: { type: 'string', default: '0' },
        visits: { type: 'string', default: '0' },
      },
    });
    const [file] = positionals;
    if (positionals.length !== 1 || !file) refuse(`One file of tanks is needed. ${USAGE}`);
    const { json, tank, now } = values;
    const absence = { days: Number(values.away), visitDays: Number(values.visits) };
    for (const [name, days] of [
      ['away', absence.days],
      ['visits', absence.visitDays],
    ] as const) {
      if (Number.isInteger(days) && days >= 0 && days <= MOST_AWAY_DAYS) continue;
      refuse(
        `--${name}: got ${values[name]}; expected whole days from 0 to ${MOST_AWAY_DAYS}. ${USAGE}`,
      );
    }
    if (!isLocalTime(now)) refuse(`--now: got ${now}; expected a date and a time. ${USAGE}`);
    return { file, json, tank, now, absence };
  } catch (error) {
    return refuse(`${(error as Error).message} ${USAGE}`);
  }
}

endWithReader();

const { file, json, tank, now, absence } = readArguments();
const read = readTanks(readText(file));
if (!read.ok) refuseFile(file, read.problems);
const tanks = read.tanks.filter(({ id, name }) => tank === undefined || [id, name].includes(tank));
if (tanks.length === 0) {
  refuse(`--tank: got ${tank}; expected one of: ${read.tanks.map(({ name }) => name).join(', ')}.`);
}
try {
  const told: TankAnswer[] = [];
  for (const one of tanks) told.push(await tankAnswer(one, now, absence));
  if (json) console.log(jsonText({ type: 'paper-reef/answers', now, tanks: told.map(tankJson) }));
  else for (const one of told) print(tankText(one));
} catch (error) {
  refuse(`${file}: ${(error as Error).message}`);
}
