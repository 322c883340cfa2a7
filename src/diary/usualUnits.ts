import type { Typed } from '../../shared/log/typedReading';
import type { DisplayUnits } from '../../shared/units/display';

/** The units of a form of readings for somebody who sees everything in these. */
export const usualUnits = ({ alkalinity, temperature, salinity }: DisplayUnits): Typed => ({
  alkalinityDkh: alkalinity,
  tempC: temperature,
  salinityPractical: salinity === 'SG' ? 'SG 25/25' : salinity,
});
