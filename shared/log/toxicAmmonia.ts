import type { Scenario } from '../scenario/schema';
import { unionisedAmmoniaFraction } from '../seawater/ammonia';
import { SeawaterConstants } from '../seawater/constants';
import { phTotalFromPhNbs } from '../seawater/phNbs';
import { newestOf } from './newest';
import type { Reading } from './reading';

/** The newest total ammonia, and how much of it harms. */
export interface ToxicAmmonia {
  readonly at: string;
  readonly totalMgPerL: number;
  readonly unionisedMgPerL: number;
  readonly phNbs: number;
  /** False where nobody has read pH: then it stands at the top of the keeper's band, the worse end. */
  readonly isPhRead: boolean;
}

/** Undefined where ammonia was never read, or what harms of it keeps the keeper's limit. */
export function toxicAmmonia(
  { limits, tank }: Scenario,
  readings: readonly Reading[],
): ToxicAmmonia | undefined {
  const total = newestOf(readings, 'ammoniaMgPerL');
  if (!total) return undefined;
  const readPh = newestOf(readings, 'phNbs')?.value;
  const phNbs = readPh ?? limits.phHighNbs;
  const tempC = newestOf(readings, 'tempC')?.value ?? tank.tempC;
  const salinityPractical =
    newestOf(readings, 'salinityPractical')?.value ?? tank.salinityPractical;
  const constants = new SeawaterConstants();
  constants.set(tempC, salinityPractical);
  const phTotal = phTotalFromPhNbs(phNbs, constants);
  const unionisedMgPerL =
    total.value * unionisedAmmoniaFraction({ phTotal, tempC, salinityPractical });
  if (unionisedMgPerL <= limits.unionisedAmmoniaMgPerL) return undefined;
  const isPhRead = readPh !== undefined;
  return { at: total.at, totalMgPerL: total.value, unionisedMgPerL, phNbs, isPhRead };
}
