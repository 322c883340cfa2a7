import { randomLcg, randomNormal } from 'd3-random';
import { NEAR_TARGET_DKH } from '../../../shared/verdict/nearTarget';
import type { Now } from '../fit/fitted';
import { rootOf } from '../forecast/leaving';
import { RESTED_H } from './holding';

/** What a log leaves open of level, use and growth, and how far use and level wander on. */
export type Open = Pick<Now, 'covariance' | 'restless'>;

const SEED = 0.577216;
const DRAWS = 400;

/** A plan begun at its target: means of its days, and the same at another use, all day by day. */
export interface Days {
  readonly targetDkh: number;
  readonly useDkhPerDay: number;
  readonly means: readonly number[];
  readonly aside: readonly number[];
  readonly asideDkhPerDay: number;
}

/**
 * Share of the tanks that the log allows whose every day, from the first week on, is near the target
 * with nobody testing again. To first order, and all by the answer to a step of the use: growth is a
 * step every day, a wandering use a step of its own each day, and a level that jumps its negative slope.
 */
export function oddsOnTarget(
  { targetDkh, useDkhPerDay, means, aside, asideDkhPerDay }: Days,
  { covariance, restless }: Open,
): number {
  const count = Math.min(means.length, aside.length);
  const days = Array.from({ length: count }, (_, day) => day);
  const step = days.map((day) => (aside[day]! - means[day]!) / asideDkhPerDay);
  const jump = days.map((day) => step[Math.max(0, day - 1)]! - step[day]! || -step[0]!);
  let grown = 0;
  const growth = step.map((by) => (grown += by * useDkhPerDay) / 100);
  const root = rootOf(covariance.slice(1).map((row) => row.slice(1)));
  const normal = randomNormal.source(randomLcg(SEED))(0, 1);
  const restedDays = RESTED_H / 24;
  const near = Array.from({ length: DRAWS }, () => {
    const [first, second] = [normal(), normal()];
    const use = root[0]![0]! * first;
    const growing = root[1]![0]! * first + root[1]![1]! * second;
    const off = days.map(
      (day) => means[day]! - targetDkh + use * step[day]! + growing * growth[day]!,
    );
    for (const from of days) {
      const byUse = normal() * restless.useDkhPerDay;
      const byLevel = normal() * restless.levelDkh;
      for (let day = from; day < count; day++) {
        off[day]! += byUse * step[day - from]! + byLevel * jump[day - from]!;
      }
    }
    return off.slice(restedDays).every((dkh) => Math.abs(dkh) <= NEAR_TARGET_DKH);
  });
  return near.filter(Boolean).length / DRAWS;
}
