import { saturationVapourKPa, seawaterVapourKPa } from './airHumidity';

const PRESSURE_KPA = 101.325;
/** Gas constant of dry air, kPa m3 kg-1 K-1. */
const DRY_AIR = 0.287055;
const MASS_RATIO = 0.62198;

export interface EvaporationInput {
  readonly waterTempC: number;
  readonly airTempC: number;
  /** 0 to 1. */
  readonly relativeHumidity: number;
  readonly salinityPractical: number;
}

const humidityRatio = (vapourKPa: number) => (MASS_RATIO * vapourKPa) / (PRESSURE_KPA - vapourKPa);
const dryAirKgPerM3 = (vapourKPa: number, tempC: number) =>
  (PRESSURE_KPA - vapourKPa) / (DRY_AIR * (tempC + 273.15));

/**
 * Water lost from a quiet surface to the room, kg per m² and hour (shah2014): the larger of
 * natural convection, which does not bring water back, and the least that a room's draught takes.
 */
export function evaporationKgPerM2PerH(input: EvaporationInput): number {
  const { waterTempC, airTempC, relativeHumidity, salinityPractical } = input;
  const water = seawaterVapourKPa(waterTempC, salinityPractical);
  const room = saturationVapourKPa(airTempC) * relativeHumidity;
  const atSurface = dryAirKgPerM3(water, waterTempC);
  const rise = dryAirKgPerM3(room, airTempC) - atSurface;
  const natural =
    rise > 0 ? 35 * atSurface * Math.cbrt(rise) * (humidityRatio(water) - humidityRatio(room)) : 0;
  const draught = 0.00005 * (water - room) * 1000;
  return Math.max(natural, draught);
}
