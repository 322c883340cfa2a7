import { densityKgPerM3 } from './density';
import { requireBetween } from './require';
import { rootBetween } from './rootBetween';

/** Density at a temperature over that of pure water at the same one. */
function specificGravityAt(tempC: number, salinityPractical: number): number {
  return densityKgPerM3(tempC, salinityPractical) / densityKgPerM3(tempC, 0);
}

export function specificGravity2525(salinityPractical: number): number {
  requireBetween('salinityPractical', salinityPractical, 0, 100);
  return specificGravityAt(25, salinityPractical);
}

export function specificGravity2020(salinityPractical: number): number {
  requireBetween('salinityPractical', salinityPractical, 0, 100);
  return specificGravityAt(20, salinityPractical);
}

export function salinityFromSpecificGravity2525(specificGravity: number): number {
  requireBetween('specificGravity', specificGravity, 1, 1.07);
  return rootBetween(0, 100, (s) => specificGravityAt(25, s) - specificGravity);
}

export function salinityFromSpecificGravity2020(specificGravity: number): number {
  requireBetween('specificGravity', specificGravity, 1, 1.07);
  return rootBetween(0, 100, (s) => specificGravityAt(20, s) - specificGravity);
}

// Volume expansion of the hydrometer's glass, per °C: common practice.
const glassPerC = 25e-6;

/** What a hydrometer marked 25/25 shows in water of another temperature. */
export function hydrometerReading2525(tempC: number, salinityPractical: number): number {
  return (
    (densityKgPerM3(tempC, salinityPractical) * (1 + glassPerC * (tempC - 25))) /
    densityKgPerM3(25, 0)
  );
}

export function salinityFromHydrometerReading2525(reading: number, tempC: number): number {
  requireBetween(
    'reading',
    reading,
    hydrometerReading2525(tempC, 0),
    hydrometerReading2525(tempC, 100),
  );
  return rootBetween(0, 100, (s) => hydrometerReading2525(tempC, s) - reading);
}
