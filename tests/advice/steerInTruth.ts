import type { TankLog } from '../../shared/log/tankLog';
import type { LineResult } from '../../shared/verdict/lineResult';
import { lineOf } from '../../shared/verdict/lineResult';
import { stateAfter } from '../../workers/engine/run';
import { settle } from '../../workers/engine/settle';
import { usualOptions } from '../../workers/engine/simulation';
import { replayed, widestDay, type Replay, type Stretch } from '../../workers/studies/turn/replay';
import type { AnySteer } from './anySteer';

const options = { ...usualOptions, toleranceUmolPerKg: 0.5 };
const columns = {
  calcium: 'calcium_mg_l',
  magnesium: 'magnesium_mg_l',
  salinity: 'salinity_ppt',
} as const;
type Own = keyof typeof columns;
const isOwn = (quantity: string): quantity is Own => quantity in columns;

/** What nobody tells of a line: a probe's reading, a test's repeat; of alkalinity as the turn's own law has it. */
const UNTOLD: Partial<Record<string, number>> = {
  ...{ ph: 0.1, alkalinity: 0.2, alkalinityChange: 0.05 },
};

/** What is said, the turn of it alone, and nothing done, in the tank's true water. */
export function steerInTruth({ any, level, isKnown }: AnySteer, both: readonly Stretch[]) {
  const { truth } = any;
  // What no reading tells of the use was typed for the water that the plan begins with.
  const { omegaReference } = isKnown ? truth.start : settle(truth, options);
  // It stands there at the hour of its newest test.
  const { clockHour } = both[0]!.scenario.start;
  const start = {
    ...{ ...truth, start: { ...truth.start, omegaReference, clockHour } },
    tank: { ...truth.tank, alkalinityDkh: level },
  };
  const from = stateAfter({ ...start, days: 0 }, options);
  const run = (done: (one: Stretch['scenario']) => Partial<Stretch['scenario']>): Replay =>
    replayed(
      both.map((one) => ({ ...one, scenario: { ...start, ...done(one.scenario) } })),
      from,
      options,
    );
  const turned = ({ dosers, topOff, calciumReactor }: Stretch['scenario']) => ({
    ...{ dosers, topOff, calciumReactor },
  });
  const isOfTurn = ({ additive }: { additive: string }) => additive === 'sodiumBicarbonate';
  return {
    said: run((one) => {
      const { additions, waterChanges } = one;
      return { ...turned(one), additions, waterChanges };
    }),
    turn: run((one) => ({ ...turned(one), additions: one.additions.filter(isOfTurn) })),
    nothing: run(() => ({})),
  };
}

export interface Breach {
  /** The line; of what moves too fast the quantity. */
  readonly id: string;
  readonly text: string;
  readonly quantity: string;
  readonly firstH: number;
  /** The farthest, or by how much in a day. */
  readonly worst: number;
}

/** Every line that would be kept with nothing done and is not as it is said; and what is moved too fast. */
export function breachesOf(one: AnySteer, both: readonly Stretch[], most: TankLog): Breach[] {
  const { truth, known } = one.any;
  const { said, turn, nothing } = steerInTruth(one, both);
  const off = {
    calcium: Math.abs(known.tank.calciumMgPerL - truth.tank.calciumMgPerL),
    magnesium: Math.abs(known.tank.magnesiumMgPerL - truth.tank.magnesiumMgPerL),
    salinity: Math.abs(known.tank.salinityPractical - truth.tank.salinityPractical),
  };
  const allowed = {
    calcium: most.mostCalciumMgPerLPerDay,
    magnesium: most.mostMagnesiumMgPerLPerDay,
    salinity: most.mostSalinityPerDay,
  };
  const untold = ({ quantity, limit }: LineResult) =>
    (UNTOLD[quantity] ?? 0.01 * limit) + (isOwn(quantity) ? off[quantity] : 0);
  /** From when on anybody can tell it. */
  const sinceH = (line: LineResult): number => {
    const { id, quantity, trouble, limit } = line;
    if (!isOwn(quantity) && quantity !== 'alkalinity') return line.firstH!;
    const beside = lineOf(nothing.lines, id);
    const from = isOwn(quantity) || beside.firstH === undefined ? limit : beside.worst;
    const past = (value: number) => (trouble === 'above' ? value - from : from - value);
    const hourly = isOwn(quantity) ? said.hourly(columns[quantity]) : said.dkh;
    return hourly.findIndex((value) => past(value) > untold(line));
  };
  const passed = said.lines.flatMap((line): Breach[] => {
    const { id, quantity, firstH, trouble, worst, limit } = line;
    if (firstH === undefined) return [];
    const [beside, alone] = [lineOf(nothing.lines, id), lineOf(turn.lines, id)];
    const beyond = (value: number) => (trouble === 'above' ? worst - value : value - worst);
    if (beyond(limit) <= untold(line)) return [];
    const text = `${id} ${worst} at ${line.worstH} h (turn alone ${alone.worst}, nothing ${beside.worst})`;
    const breach = [{ id, text, quantity, worst, firstH: sinceH(line) }];
    if (beside.firstH === undefined) return breach;
    // What is out anyway may go no farther.
    const farthest = isOwn(quantity) ? alone : beside;
    return beyond(farthest.worst) > untold(line) ? breach : [];
  });
  const fast = (Object.keys(columns) as Own[]).flatMap((id): Breach[] => {
    const widest = (one: Replay) =>
      widestDay(one.hourly(columns[id]), 0, one.hourly(columns[id]).length);
    const by = widest(said);
    // What was read wrongly a change of water moves by its share, too.
    const unread = (truth.waterChanges.percent / 100) * off[id];
    const isFast = by > Math.max(allowed[id], widest(turn)) * 1.08 + unread;
    const text = `${id} moves ${by} in a day`;
    return isFast ? [{ id, text, quantity: id, worst: by, firstH: 0 }] : [];
  });
  return [...passed, ...fast];
}
