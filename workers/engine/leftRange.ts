import type { TankView } from './tankView';

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
  const left = `salinity ${salinityPractical.toFixed(0)} ppt with ${volumeL.toFixed(1)} L left`;
  const where = `The trial stops at hour ${timeH.toFixed(1)}: in the tank`;
  throw new LeftRange(
    timeH,
    dry
      ? `${where} next to no water is left (${left}). Refill sooner, or look for the leak.`
      : `${where} too much water has evaporated (${left}), beyond the chemistry here. Refill the reservoir sooner, take a larger one, or check the evaporation.`,
  );
}

/** A solver's complaint as the end of a trial, said to the keeper. */
export function leftRangeBy(error: unknown, timeH: number): unknown {
  if (!(error instanceof RangeError) || error instanceof LeftRange) return error;
  return new LeftRange(
    timeH,
    `The trial stops at hour ${timeH.toFixed(1)}: in the tank ${error.message}.`,
  );
}
