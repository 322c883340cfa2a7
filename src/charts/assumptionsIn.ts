import type { Scenario } from '../../shared/scenario/schema';

/** What every picture says about itself. */
export const madeBy =
  'Computed by Paper Reef, a simulation, not a measurement. Carbonate constants: Lueker et al. 2000; pH on the NBS scale (Takahashi et al. 1982).';

/** The plan behind a line, in one line. */
export const assumptionsOf = (name: string, { tank, corals, room, gas }: Scenario): string =>
  `${name}: ${tank.volumeL} L, S ${tank.salinityPractical}, ${tank.tempC} °C; ${
    corals.measuredAs === 'use'
      ? `use ${corals.useDkhPerDay} dKH/day at the start`
      : `${corals.rateMmolPerM2PerDay} mmol/m²/day on ${corals.areaM2} m²`
  }; room CO₂ ${room.co2Ppm} ppm, kLa ${gas.kLaPerH} per hour.`;
