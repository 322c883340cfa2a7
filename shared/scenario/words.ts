import { faultKinds, responseKinds } from '../faults/faultKinds';
import { additives, type AdditiveId } from '../species/additives';

const labelsOf = (kinds: Readonly<Record<string, { label: string }>>) =>
  Object.fromEntries(Object.entries(kinds).map(([id, { label }]) => [id, label]));

const words: Readonly<Record<string, string>> = {
  none: 'nothing, plain water',
  use: 'daily use of the tank',
  area: 'rate on living coral',
  gentle: 'gentle, 15 % per Ω',
  proportional: 'in step with Ω − 1',
  settledCycle: 'settled daily cycle',
  airEquilibrium: 'balance with the room air',
  measuredPh: 'a pH I measured',
  branching: 'branching',
  massive: 'massive',
  bell: 'best at 27 °C',
  guarded: 'only above Ω 10',
  enabled: 'above the Ω set below',
  burtonWalter1987: 'Burton & Walter 1987',
  zhongMucci1989: 'Zhong & Mucci 1989, 25 °C',
  fixed: 'as measured',
  byAir: 'from the room’s air',
  aerated: 'aerated',
  fresh: 'freshly mixed',
  spread: 'a steady drip',
  doses: 'so many doses a day',
  everyMinutes: 'every so many minutes',
  still: 'still surface',
  rippled: 'rippled surface',
  skimmer: 'overflow and skimmer',
  skimmerOutsideAir: 'skimmer with outside air',
  works: 'stops it',
  fails: 'does not stop it',
  ...labelsOf(faultKinds),
  ...labelsOf(responseKinds),
};

/** The plain words for a choice. */
export const wordFor = (option: string): string =>
  option in additives ? additives[option as AdditiveId].label : (words[option] ?? option);
