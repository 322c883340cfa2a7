import { usualOptions } from '../../workers/engine/simulation';
import { toldRun } from '../../workers/desk/logQuestions';
import { seasonOptions, seasonTank } from '../../workers/studies/season/ahead';
import { heldSalinity } from '../../workers/studies/season/firstAsked';
import type { First } from '../../workers/studies/season/firstDays';
import { metals } from '../../workers/studies/season/metals';
import { meanOf, type SeasonTank } from '../../workers/studies/season/seasonTank';
import type { Stretch } from '../../workers/studies/turn/replay';
import type { steeredLogs } from './anySteer';

type Asked = Awaited<ReturnType<typeof steeredLogs>>[number];
type Firsts = Extract<First, { kind: 'first' }>;

/** g/mol of the salt that is poured, which brings one mole of the metal. */
const GRAMS_PER_MOL = {
  calcium: { salt: 147.01, metal: 40.078 },
  magnesium: { salt: 203.3, metal: 24.305 },
} as const;

/** Where the steer's own mornings lead, as a target: all of the way, or the share of it that is said. */
function targetsOf(tank: SeasonTank, { share }: Firsts, { wants }: Asked) {
  const towards = (from: number, to: number) => from + share * (to - from);
  return {
    calcium: towards(tank.level('calcium'), wants.targets.calcium),
    magnesium: towards(tank.level('magnesium'), wants.targets.magnesium),
    salinity: towards(tank.level('salinity'), heldSalinity(tank)),
  };
}

/** The tank as it was read, with the turn that is said. */
export function tankOf({ turn, happened, wants, steer }: Asked): SeasonTank | undefined {
  if (!steer.steered) return undefined;
  const { now, giveOrTakeDkhPerDay } = turn.question;
  const asked = { ...wants, now, giveOrTakeDkhPerDay, readings: happened, turned: toldRun(turn) };
  return seasonTank(asked, seasonOptions(usualOptions));
}

/**
 * The keeper's arithmetic: grams = litres × mmol/L to rise × g/mmol; litres of new water by dilution,
 * V (S − T) / (S − M); as many days as the daily limits ask for, by division.
 */
function handMornings(
  tank: SeasonTank,
  first: Firsts,
  asked: Asked,
): { stretch: Stretch; days: number } {
  const { now } = tank;
  const { volumeL } = now.tank;
  const { poured, change, stretch } = first;
  const { mostPerDay } = asked.wants;
  const to = targetsOf(tank, first, asked);
  const rises = metals.filter((metal) => poured[metal]);
  const moves = salinityIsMoved(tank, first) ? Math.abs(to.salinity - tank.level('salinity')) : 0;
  const days = Math.max(
    1,
    Math.ceil(moves / mostPerDay.salinity),
    ...rises.map((metal) => Math.ceil((to[metal] - tank.level(metal)) / mostPerDay[metal])),
  );
  const [begins] = stretch.scenario.additions;
  const firstDay = begins?.day ?? (now.start.clockHour < 9 ? 1 : 2);
  const additions = Array.from({ length: days }, (_, i) => i + firstDay).flatMap((day) =>
    rises.map((metal) => {
      const { salt, metal: mass } = GRAMS_PER_MOL[metal];
      const grams = (volumeL * ((to[metal] - tank.level(metal)) / mass) * salt) / 1000 / days;
      return { day, hour: 9, additive: poured[metal]!.additive, grams };
    }),
  );
  const salinity = tank.level('salinity');
  const litres = change
    ? (volumeL * (salinity - to.salinity)) / (salinity - change.salinityPractical)
    : 0;
  const waterChanges =
    moves > 0
      ? { ...stretch.scenario.waterChanges, percent: Math.max(0, (100 * litres) / volumeL / days) }
      : now.waterChanges;
  const untilDay = days + firstDay;
  return {
    days,
    stretch: { untilDay, scenario: { ...now, days: untilDay, additions, waterChanges } },
  };
}

const salinityIsMoved = (tank: SeasonTank, { change }: Firsts): boolean => {
  const { low, high } = tank.band('salinity');
  const level = tank.level('salinity');
  return change !== undefined && (level < low || level > high);
};

export interface Miss {
  readonly id: 'calcium' | 'magnesium' | 'salinity';
  readonly steer: number;
  readonly byHand: number;
}

/** How far from its target each that is moved stands on the day after the last morning. */
export function missesOf(asked: Asked): Miss[] {
  const tank = tankOf(asked);
  const { steered } = asked.steer;
  if (!tank || steered?.first.kind !== 'first' || !steered.together?.ends) return [];
  const { first, together } = steered;
  const hand = handMornings(tank, first, asked);
  const days = hand.stretch.untilDay + 1;
  const run = tank.turnedWith({ first: hand.stretch }, days, tank.uses[0]!);
  const fromH = first.endsFromH + (hand.days - first.days) * 24;
  const to = targetsOf(tank, first, asked);
  const ids = [
    ...metals.filter((metal) => first.poured[metal]),
    ...(salinityIsMoved(tank, first) ? (['salinity'] as const) : []),
  ];
  return ids.map((id) => ({
    id,
    steer: Math.abs(together.ends![id] - to[id]),
    byHand: Math.abs(meanOf(run, id, fromH, fromH + 24) - to[id]),
  }));
}
