import type { Scenario } from '../scenario/schema';

/** Heat in a litre of seawater, J/(L °C) (from memory). */
const HEAT_J_PER_L_C = 4080;
/** What a square metre lets through, W/(m² °C): glass, and open water with its vapour (estimate). */
const WALL_W_PER_M2_C = 5;
const SURFACE_W_PER_M2_C = 20;
/** Against a cube's face: no wider is a tank that anyone keeps (estimate). */
const WIDEST = 1.5;

/**
 * Time constant with which a tank without power nears the room's temperature, h: an estimate. A
 * square box of the tank's volume under its open surface, in still air. A usual surface that nobody
 * fitted to a small tank is taken as no wider than such a tank may be.
 */
export function estimatedCoolingHours({ tank, evaporation }: Scenario): number {
  const widestM2 = WIDEST * (tank.volumeL / 1000) ** (2 / 3);
  const surfaceM2 = Math.min(evaporation.surfaceM2, widestM2);
  const depthM = tank.volumeL / 1000 / surfaceM2;
  const wallM2 = 4 * Math.sqrt(surfaceM2) * depthM + surfaceM2;
  const wattsPerC = WALL_W_PER_M2_C * wallM2 + SURFACE_W_PER_M2_C * surfaceM2;
  return (HEAT_J_PER_L_C * tank.volumeL) / wattsPerC / 3600;
}

/** That of one power cut; undefined when its temperature stays. */
export function coolingHours(
  { cooling, coolingHours: own }: Scenario['faults'][number],
  scenario: Scenario,
): number | undefined {
  if (cooling === 'none') return undefined;
  return cooling === 'own' ? own : estimatedCoolingHours(scenario);
}
