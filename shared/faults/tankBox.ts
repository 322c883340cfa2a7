import type { Scenario } from '../scenario/schema';

/** Against a cube's face: no wider is a tank that anyone keeps (estimate). */
const WIDEST = 1.5;

/**
 * The tank as a square box of its volume under its open surface. A usual surface that nobody fitted
 * to a small tank is taken as no wider than such a tank may be.
 */
export function tankBox({ tank, evaporation }: Scenario): {
  readonly surfaceM2: number;
  readonly depthM: number;
} {
  const m3 = tank.volumeL / 1000;
  const surfaceM2 = Math.min(evaporation.surfaceM2, WIDEST * m3 ** (2 / 3));
  return { surfaceM2, depthM: m3 / surfaceM2 };
}
