/** Saturation pressure of water vapour over pure water, kPa, 0–200 °C (hylandWexler1983, from memory). */
export function saturationVapourKPa(tempC: number): number {
  const t = tempC + 273.15;
  const lnPa =
    -5.8002206e3 / t +
    1.3914993 -
    4.8640239e-2 * t +
    4.1764768e-5 * t * t -
    1.4452093e-8 * t * t * t +
    6.5459673 * Math.log(t);
  return Math.exp(lnPa) / 1000;
}

/** Seawater lowers the vapour pressure: water activity at salinity 35, in proportion elsewhere. */
const ACTIVITY_LOSS_AT_35 = 1 - 0.9815;

export const seawaterVapourKPa = (tempC: number, salinityPractical: number): number =>
  saturationVapourKPa(tempC) * (1 - (ACTIVITY_LOSS_AT_35 * salinityPractical) / 35);
