import { additives, type AdditiveId } from '../species/additives';

const words: Readonly<Record<string, string>> = {
  none: 'nothing, plain water',
  use: 'daily use of the tank',
  area: 'rate on living coral',
  gentle: 'gentle, 15 % per Ω',
  proportional: 'in step with Ω − 1',
  settledCycle: 'settled daily cycle',
  airEquilibrium: 'balance with the room air',
  measuredPh: 'a pH I measured',
  still: 'still surface',
  rippled: 'rippled surface',
  skimmer: 'overflow and skimmer',
  skimmerOutsideAir: 'skimmer with outside air',
};

/** The plain words for a choice. */
export const wordFor = (option: string): string =>
  option in additives ? additives[option as AdditiveId].label : (words[option] ?? option);
