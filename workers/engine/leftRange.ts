import { figure } from '../../shared/words/figure';
import { say as verdict } from '../../shared/words/verdict';
import type { TankView } from './tankView';

const say = verdict.stops;

/** Beyond this salinity (ppt) the chemistry means nothing any more. */
const HIGHEST_SALINITY = 60;
/** A tank with less than this share of its water is empty for all that is said of it here. */
const LEAST_VOLUME_SHARE = 0.1;

/** The tank has left the chemistry's range: where, when and why, for the keeper. */
export class LeftRange extends RangeError {
  constructor(
    readonly timeH: number,
    reason: string,
  ) {
    super(reason);
  }
}

/** Throws LeftRange when the tank is drying up: for want of water, or for too much salt. */
export function assertInRange(view: TankView, startVolumeL: number): void {
  const { salinityPractical, volumeL, timeH } = view;
  const dry = volumeL < startVolumeL * LEAST_VOLUME_SHARE;
  if (!dry && salinityPractical <= HIGHEST_SALINITY) return;
  const told = [
    figure(timeH, 1),
    `${figure(salinityPractical, 0)} ppt`,
    `${figure(volumeL, 1)} L`,
  ] as const;
  throw new LeftRange(timeH, dry ? say.noWater(...told) : say.tooSalty(...told));
}

/** What switches or reacts so often that the trial would never end. */
export const tooManySteps = (timeH: number, steps: number): LeftRange =>
  new LeftRange(timeH, say.neverEnds(figure(timeH, 1), String(Math.round(steps))));

/** A solver's complaint as the end of a trial, said to the keeper. */
export function leftRangeBy(error: unknown, timeH: number): unknown {
  if (!(error instanceof RangeError) || error instanceof LeftRange) return error;
  return new LeftRange(timeH, say.noChemistry(figure(timeH, 1), error.message));
}
