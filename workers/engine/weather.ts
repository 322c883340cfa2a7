import { factorAt, type Factors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { pco2WetUatm } from '../../shared/seawater/gas';

/** What the room imposes on the tank: its temperature and the CO2 of its air. */
export interface Weather {
  tempC(timeH: number): number;
  pco2AirUatm(timeH: number, tempC: number): number;
}

function temperatureLine({ tank, temperaturePlan }: Scenario): (timeH: number) => number {
  const points = [{ day: 0, tempC: tank.tempC }, ...temperaturePlan]
    .map(({ day, tempC }) => ({ timeH: day * 24, tempC }))
    .sort((a, b) => a.timeH - b.timeH);
  if (points.length === 1) return () => tank.tempC;
  return (timeH) => {
    const next = points.findIndex((point) => point.timeH > timeH);
    if (next < 0) return points[points.length - 1]!.tempC;
    if (next === 0) return points[0]!.tempC;
    const [from, to] = [points[next - 1]!, points[next]!];
    return from.tempC + ((to.tempC - from.tempC) * (timeH - from.timeH)) / (to.timeH - from.timeH);
  };
}

function roomCo2({ room, start }: Scenario): (timeH: number) => number {
  if (room.co2PpmByHour.length === 0) return () => room.co2Ppm;
  const hours = Float64Array.from(room.co2PpmByHour);
  return (timeH) => {
    const clock = (((timeH + start.clockHour) % 24) + 24) % 24;
    const hour = Math.floor(clock);
    const now = hours[hour % 24]!;
    return now + (hours[(hour + 1) % 24]! - now) * (clock - hour);
  };
}

/** Vapour pressure is taken at the start's salinity: 1 ppt moves it by 0.05 %. */
export function weatherOf(scenario: Scenario, factors: Factors): Weather {
  const tempC = temperatureLine(scenario);
  const ppm = roomCo2(scenario);
  const { salinityPractical } = scenario.tank;
  let lastTempC = NaN;
  let wetPerPpm = NaN;
  return {
    tempC,
    pco2AirUatm(timeH, temp) {
      if (temp !== lastTempC) {
        lastTempC = temp;
        wetPerPpm = pco2WetUatm(1, temp, salinityPractical);
      }
      return ppm(timeH) * wetPerPpm * Math.max(0, factorAt(factors.roomCo2, timeH));
    },
  };
}
