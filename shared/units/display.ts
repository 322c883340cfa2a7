import { meqPerLPerDkh } from '../seawater/alkalinity';
import { molarMassGPerMol } from '../seawater/atomicMasses';
import { salinityFromSpecificGravity2525, specificGravity2525 } from '../seawater/specificGravity';
import { spokenUnit } from './spokenUnit';

/** The units and the decimal sign that a reader wants to see; everything inside keeps its own. */
export interface DisplayUnits {
  readonly alkalinity: 'dKH' | 'meq/L' | 'mg/L CaCO₃';
  readonly volume: 'L' | 'US gal';
  readonly temperature: '°C' | '°F';
  readonly salinity: 'ppt' | 'SG';
  readonly decimal: 'point' | 'comma';
}

export const usualDisplay: DisplayUnits = {
  alkalinity: 'dKH',
  volume: 'L',
  temperature: '°C',
  salinity: 'ppt',
  decimal: 'point',
};

/** How one of our units is shown as another. */
interface Conversion {
  readonly unit: string;
  /** Decimals more (or fewer) that say as much as in our unit. */
  readonly moreDigits: number;
  readonly out: (value: number) => number;
  readonly back: (shown: number) => number;
}

const times = (unit: string, factor: number, moreDigits: number): Conversion => ({
  unit,
  moreDigits,
  out: (value) => value * factor,
  back: (shown) => shown / factor,
});

const MG_CACO3_PER_MEQ = molarMassGPerMol({ Ca: 1, C: 1, O: 3 }) / 2;
/** 231 cubic inches of 25.4 mm each: exact by definition. */
const L_PER_US_GAL = 3.785411784;

/** What stands before "/day" or "/h" is converted; the time stays. */
const conversions: Readonly<Record<string, Conversion>> = {
  'meq/L': times('meq/L', meqPerLPerDkh, 1),
  'mg/L CaCO₃': times('mg/L CaCO₃', meqPerLPerDkh * MG_CACO3_PER_MEQ, -1),
  'US gal': times('US gal', 1 / L_PER_US_GAL, 1),
  '°F': {
    unit: '°F',
    moreDigits: 0,
    out: (tempC) => tempC * 1.8 + 32,
    back: (tempF) => (tempF - 32) / 1.8,
  },
  SG: {
    unit: 'SG',
    moreDigits: 3,
    out: (salinity) => specificGravity2525(Math.max(0, Math.min(100, salinity))),
    back: (shown) => (shown > 1 && shown < 1.07 ? salinityFromSpecificGravity2525(shown) : NaN),
  },
};

const asIt = (unit: string): Conversion => times(unit, 1, 0);

const chosen = (base: string, display: DisplayUnits): string =>
  ({
    dKH: display.alkalinity,
    L: display.volume,
    '°C': display.temperature,
    ppt: display.salinity,
  })[base] ?? base;

/** How a unit of ours is shown to this reader. */
export function conversionOf(unit: string, display: DisplayUnits): Conversion {
  const [, base = unit, per = ''] = /^(dKH|L)(\/(?:day|h))$/.exec(unit) ?? [];
  const conversion = conversions[chosen(base, display)];
  return conversion
    ? { ...conversion, unit: spokenUnit(conversion.unit + per) }
    : asIt(spokenUnit(unit));
}
