import { densityEos80Range } from './density';
import { kNh4CleggWhitfield1995Range } from './fits/ammonium';
import { ksDickson1990Range } from './fits/bisulfate';
import { kbDickson1990Range } from './fits/boricAcid';
import { kspMucci1983Range } from './fits/calciumCarbonate';
import { k1k2Lueker2000Range } from './fits/carbonicAcid';
import { k0Weiss1974Range } from './fits/co2Solubility';
import type { FittedRange } from './fits/fittedRange';
import { kfPerezFraga1987Range } from './fits/hydrogenFluoride';
import { kpYaoMillero1995Range } from './fits/phosphoricAcid';
import { fHTakahashi1982Range } from './fits/protonActivity';
import { kwMillero1995Range } from './fits/water';
import { oxygenGarciaGordon1992Range } from './oxygen';
import { waterVapourWeissPrice1980Range } from './gas';

/** Above this pH (total) ion pairs the constants do not know take over: Ω may be 2x off. */
export const highestPhTotal = 9.5;

export const fittedRanges = {
  k1k2Lueker2000: k1k2Lueker2000Range,
  kbDickson1990: kbDickson1990Range,
  kwMillero1995: kwMillero1995Range,
  ksDickson1990: ksDickson1990Range,
  kfPerezFraga1987: kfPerezFraga1987Range,
  k0Weiss1974: k0Weiss1974Range,
  kspMucci1983: kspMucci1983Range,
  kpYaoMillero1995: kpYaoMillero1995Range,
  kNh4CleggWhitfield1995: kNh4CleggWhitfield1995Range,
  fHTakahashi1982: fHTakahashi1982Range,
  densityEos80: densityEos80Range,
  waterVapourWeissPrice1980: waterVapourWeissPrice1980Range,
  oxygenGarciaGordon1992: oxygenGarciaGordon1992Range,
} as const satisfies Record<string, FittedRange>;

export type FitName = keyof typeof fittedRanges;
export type RangeFlag = FitName | 'high-ph';

export interface RangeInput {
  tempC: number;
  salinityPractical: number;
  phTotal: number;
}

/** The fits that this water lies outside of; a number that is not finite is outside all of them. */
export function outOfRange({ tempC, salinityPractical, phTotal }: RangeInput): RangeFlag[] {
  const flags: RangeFlag[] = [];
  for (const [name, range] of Object.entries(fittedRanges)) {
    if (!within(tempC, range.tempC) || !within(salinityPractical, range.salinityPractical))
      flags.push(name as FitName);
  }
  if (!(phTotal <= highestPhTotal)) flags.push('high-ph');
  return flags;
}

/** The same question for the engine, which asks it at every step: is any fit outside? */
export function isOutOfRange(tempC: number, salinityPractical: number, phTotal: number): boolean {
  return !(
    within(tempC, commonRange.tempC) &&
    within(salinityPractical, commonRange.salinityPractical) &&
    phTotal <= highestPhTotal
  );
}

const all: readonly FittedRange[] = Object.values(fittedRanges);

/** Where every fit holds. */
export const commonRange = {
  tempC: [Math.max(...all.map((r) => r.tempC[0])), Math.min(...all.map((r) => r.tempC[1]))],
  salinityPractical: [
    Math.max(...all.map((r) => r.salinityPractical[0])),
    Math.min(...all.map((r) => r.salinityPractical[1])),
  ],
} as const;

function within(value: number, [least, most]: readonly [number, number]): boolean {
  return value >= least && value <= most;
}
