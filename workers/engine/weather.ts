import { coolingHours } from '../../shared/faults/coolingHours';
import { drift, excursion } from '../../shared/faults/excursion';
import { Windows } from '../../shared/faults/windows';
import { QUOTIENT_H } from '../../shared/processes/quotient';
import { factorAt, type Factors } from '../../shared/scenario/factors';
import type { Scenario } from '../../shared/scenario/schema';
import { pco2WetUatm } from '../../shared/seawater/gas';

/** What the room imposes on the tank: its temperature and the CO2 of its air. */
export interface Weather {
  tempC(timeH: number): number;
  pco2AirUatm(timeH: number, tempC: number): number;
  /** Whether either of them ever changes. */
  readonly moves: boolean;
  /** How they change in an hour, just before a moment (-1) or just after it (1): they bend at whole hours. */
  tempCPerH(timeH: number, side: -1 | 1): number;
  pco2AirUatmPerH(timeH: number, side: -1 | 1): number;
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

/** A heater or chiller that fails drags the water away, and lets go of it at the same pace. */
function withHeaterFaults(scenario: Scenario, tempC: (timeH: number) => number) {
  const { faults, start } = scenario;
  const { all } = new Windows(faults, 'heater', start.clockHour);
  if (all.length === 0) return tempC;
  return (timeH: number) =>
    all.reduce((now, window) => {
      const gapC = window.what.endTempC - tempC(window.fromH);
      if (gapC === 0) return now;
      return now + gapC * excursion(window, timeH, window.what.degreesPerH / Math.abs(gapC));
    }, tempC(timeH));
}

/** Without power the water drifts to the room's temperature, and is heated back afterwards. */
function withPowerCuts(scenario: Scenario, tempC: (timeH: number) => number) {
  const { faults, start, evaporation } = scenario;
  const cuts = new Windows(faults, 'powerCut', start.clockHour).all.flatMap((window) => {
    const hours = coolingHours(window.what, scenario);
    return hours === undefined ? [] : [{ window, hours }];
  });
  if (cuts.length === 0) return tempC;
  return (timeH: number) =>
    cuts.reduce(
      (now, { window, hours }) => now + (evaporation.airTempC - now) * drift(window, timeH, hours),
      tempC(timeH),
    );
}

/** Air outdoors, ppm (from memory: about 420 to 430). */
export const OUTDOOR_PPM = 425;

/** The air that the water meets: that of the room, or in part what a skimmer draws from outside. */
function withOutsideAir({ gas }: Scenario, ppm: (timeH: number) => number) {
  if (gas.aeration !== 'skimmerOutsideAir' || gas.outsideAirPercent === 0) return ppm;
  const share = gas.outsideAirPercent / 100;
  return (timeH: number) => ppm(timeH) + share * (OUTDOOR_PPM - ppm(timeH));
}

/** Air of the room, and what is blown in beside it. */
function withCo2Windows(scenario: Scenario, ppm: (timeH: number) => number) {
  const { faults, responses, start } = scenario;
  const rises = new Windows(faults, 'roomCo2', start.clockHour).all;
  const blownIn = new Windows(responses, 'co2Air', start.clockHour);
  if (rises.length === 0 && blownIn.all.length === 0) return ppm;
  return (timeH: number) => {
    const now = ppm(timeH);
    const risen = rises.reduce((sum, window) => {
      const { co2Ppm, riseHours } = window.what;
      return sum + (co2Ppm - now) * excursion(window, timeH, 1 / Math.max(1e-3, riseHours));
    }, now);
    return blownIn.at(timeH)?.co2Ppm ?? Math.max(0, risen);
  };
}

/** Whether nothing in this scenario ever moves the room or the water's warmth. */
const isStill = ({ temperaturePlan, faults, responses, room }: Scenario, factors: Factors) =>
  temperaturePlan.length === 0 &&
  room.co2PpmByHour.length === 0 &&
  !factors.roomCo2 &&
  [...faults, ...responses].length === 0;

/** Vapour pressure is taken at the start's salinity: 1 ppt moves it by 0.05 %. */
export function weatherOf(scenario: Scenario, factors: Factors): Weather {
  const tempC = withPowerCuts(scenario, withHeaterFaults(scenario, temperatureLine(scenario)));
  const ppm = withCo2Windows(scenario, withOutsideAir(scenario, roomCo2(scenario)));
  const { salinityPractical } = scenario.tank;
  let lastTempC = NaN;
  let wetPerPpm = NaN;
  const pco2AirUatm = (timeH: number, temp: number) => {
    if (temp !== lastTempC) {
      lastTempC = temp;
      wetPerPpm = pco2WetUatm(1, temp, salinityPractical);
    }
    return ppm(timeH) * wetPerPpm * Math.max(0, factorAt(factors.roomCo2, timeH));
  };
  const moves = !isStill(scenario, factors);
  const perH = (value: (timeH: number) => number, timeH: number, side: number) =>
    moves ? (value(timeH + side * QUOTIENT_H) - value(timeH)) / (side * QUOTIENT_H) : 0;
  const airAt = (timeH: number) => pco2AirUatm(timeH, tempC(timeH));
  return {
    ...{ tempC, pco2AirUatm, moves },
    tempCPerH: (timeH, side) => perH(tempC, timeH, side),
    pco2AirUatmPerH: (timeH, side) => perH(airAt, timeH, side),
  };
}
