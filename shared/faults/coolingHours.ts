import type { Scenario } from '../scenario/schema';
import { tankBox } from './tankBox';

/** Heat in a litre of seawater, J/(L °C) (from memory). */
const HEAT_J_PER_L_C = 4080;
/** What a square metre lets through, W/(m² °C): glass, and open water with its vapour (estimate). */
const WALL_W_PER_M2_C = 5;
const SURFACE_W_PER_M2_C = 20;
/** Blankets around the glass and the lid on let through half of it (estimate). */
const WRAPPED = 2;

/**
 * Time constant with which a tank without power nears the room's temperature, h: an estimate. A
 * square box of the tank's volume under its open surface, in still air.
 */
export function estimatedCoolingHours(scenario: Scenario): number {
  const { tank } = scenario;
  const { surfaceM2, depthM } = tankBox(scenario);
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

/** The same fault with the tank wrapped: slower by what blankets and a lid hold back. */
export function wrapped(
  fault: Scenario['faults'][number],
  scenario: Scenario,
): Scenario['faults'][number] {
  const hours = coolingHours(fault, scenario);
  return hours === undefined
    ? fault
    : { ...fault, cooling: 'own', coolingHours: Math.min(500, hours * WRAPPED) };
}
