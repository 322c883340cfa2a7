import type { WhyStopped } from '../../shared/verdict/outcome';
import type { TankView } from './tankView';

/** Beyond this salinity (ppt) the chemistry means nothing any more. */
const HIGHEST_SALINITY = 60;
/** A tank with less than this share of its water is empty for all that is said of it here. */
const LEAST_VOLUME_SHARE = 0.1;

/** The tank has left the chemistry's range: where, when and why. */
export class LeftRange extends RangeError {
  constructor(
    readonly timeH: number,
    readonly why: WhyStopped,
  ) {
    super(`${why.kind} at ${timeH} h`);
  }
}

/** Throws LeftRange when the tank is drying up: for want of water, or for too much salt. */
export function assertInRange(view: TankView, startVolumeL: number): void {
  const { salinityPractical, volumeL, timeH } = view;
  const dry = volumeL < startVolumeL * LEAST_VOLUME_SHARE;
  if (!dry && salinityPractical <= HIGHEST_SALINITY) return;
  throw new LeftRange(timeH, { kind: dry ? 'noWater' : 'tooSalty', salinityPractical, volumeL });
}

/** What switches or reacts so often that the trial would never end. */
export const tooManySteps = (timeH: number, steps: number): LeftRange =>
  new LeftRange(timeH, { kind: 'neverEnds', steps });

/** A solver's complaint as the end of a trial. */
export function leftRangeBy(error: unknown, timeH: number): unknown {
  if (!(error instanceof RangeError) || error instanceof LeftRange) return error;
  return new LeftRange(timeH, { kind: 'noChemistry', complaint: error.message });
}
