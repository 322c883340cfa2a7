import type { Scenario } from '../../shared/scenario/schema';
import { say } from '../../shared/words/charts';
import { figure } from '../../shared/words/figure';

/** What every picture says about itself. */
export const { madeBy } = say;

/** The plan behind a line, in one line. */
export const assumptionsOf = (name: string, { tank, corals, room, gas }: Scenario): string =>
  say.plan(
    name,
    `${figure(tank.volumeL)} L, S ${figure(tank.salinityPractical)}, ${figure(tank.tempC)} °C`,
    corals.measuredAs === 'use'
      ? say.use(figure(corals.useDkhPerDay))
      : say.rate(figure(corals.rateMmolPerM2PerDay), figure(corals.areaM2)),
    figure(room.co2Ppm),
    figure(gas.kLaPerH),
  );
