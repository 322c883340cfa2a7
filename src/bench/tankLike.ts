import { toFigures } from '../../shared/units/digits';
import { quantityText } from '../../shared/units/format';
import { say as settings } from '../../shared/words/settings';
import { say as words } from '../../shared/words/firstMinute';
import { meqPerLPerDkh } from '../../shared/seawater/alkalinity';
import { STOCK_G_PER_L, twoPart } from '../../shared/recipe/twoPart';
import { alkalinityMeqPerG } from '../../shared/species/additives';
import type { Scenario } from '../../shared/scenario/schema';
import { scenarioOf } from '../../shared/scenario/write';
import { preferences } from '../store/preferences.svelte';

const say = words.first;

/** What lives in a tank, and what such tanks use in a day, dKH (common practice, no source). */
export const dwellers = [
  { id: 'soft', label: say.soft, useDkhPerDay: 0.15 },
  { id: 'mixed', label: say.mixed, useDkhPerDay: 1 },
  { id: 'stony', label: say.stony, useDkhPerDay: 2.5 },
] as const;

/** What brings alkalinity now, and where to look next. */
export const carriers = [
  {
    id: 'none',
    label: say.none,
    next: say.noneNext,
  },
  {
    id: 'limewater',
    label: say.limewater,
    next: say.limewaterNext,
  },
  {
    id: 'pump',
    label: say.pump,
    next: say.pumpNext,
  },
  {
    id: 'water',
    label: say.water,
    next: say.waterNext,
  },
] as const;

export interface FirstAnswers {
  readonly volumeL: number;
  readonly dweller: (typeof dwellers)[number]['id'];
  readonly carrier: (typeof carriers)[number]['id'];
}

/** Shares of the volume that are assumed of a tank nobody has measured yet (common practice). */
const EVAPORATION_SHARE = 0.013;
const RESERVOIR_SHARE = 0.06;
/** It holds about 1 dKH a day at that evaporation. */
const USUAL_MIX_G_PER_L = 1.1;

/** As much as holds the use at this evaporation, and no stronger than a clear mix usually is. */
const mixGPerL = (useDkhPerDay: number): number =>
  Math.min(USUAL_MIX_G_PER_L, toFigures(USUAL_MIX_G_PER_L * useDkhPerDay, 2));

/** What two parts leave behind is table salt: where much of them goes in, it goes with the water. */
function changedEveryDays(carrier: FirstAnswers['carrier'], useDkhPerDay: number): number {
  if (carrier === 'water') return 7;
  return carrier === 'pump' && useDkhPerDay > 2 ? 3.5 : 0;
}

/** Both parts: carbonate alone goes on until the corals have no calcium left. */
function pair(tank: Scenario): Scenario['dosers'] {
  const { corals, tank: water } = tank;
  const mlPerDay = sodaMlPerDay(corals.useDkhPerDay, water.volumeL);
  const { carbonate, calcium } = settings;
  return twoPart('sodiumCarbonate', mlPerDay, tank, { carbonate, calcium });
}

function sodaMlPerDay(useDkhPerDay: number, volumeL: number): number {
  const grams = (useDkhPerDay * meqPerLPerDkh * volumeL) / alkalinityMeqPerG('sodiumCarbonate');
  return toFigures((grams / STOCK_G_PER_L.sodiumCarbonate) * 1000, 2);
}

/** As the reader sees quantities, with the two figures that were assumed. */
const text = (value: number, unit: string) =>
  quantityText(value, value < 1 ? 2 : value < 10 ? 1 : 0, unit, preferences.now);

/** A tank like the keeper's, out of three answers; everything else is assumed and says so. */
export function tankLike({ volumeL, dweller, carrier }: FirstAnswers): Scenario {
  const { label, useDkhPerDay } = dwellers.find(({ id }) => id === dweller)!;
  const { next } = carriers.find(({ id }) => id === carrier)!;
  const everyDays = changedEveryDays(carrier, useDkhPerDay);
  const litresPerDay = toFigures(volumeL * EVAPORATION_SHARE, 2);
  const tank = scenarioOf({
    type: 'paper-reef/scenario',
    version: 5,
    title: say.tank(text(volumeL, 'L')),
    place: say.assumed(text(volumeL, 'L'), label),
    question: say.untilMeasured(text(litresPerDay, 'L'), text(useDkhPerDay, 'dKH'), next),
    days: 30,
    tank: { volumeL, alkalinityDkh: 8.5, calciumMgPerL: 425, magnesiumMgPerL: 1310 },
    corals: { useDkhPerDay, growthPercentPerDay: 0 },
    evaporation: { litresPerDay },
    food: { gramsPerDay: toFigures(volumeL * 0.01, 1) },
    gas: { kLaPerH: 2 },
    topOff: {
      reservoirL: Math.max(1, toFigures(volumeL * RESERVOIR_SHARE, 2)),
      refillEveryDays: 4,
      pumpLPerH: Math.max(0.5, toFigures(volumeL * 0.01, 1)),
      deadBandL: toFigures(Math.max(0.03, volumeL * 0.002), 1),
      ...(carrier === 'limewater' && {
        additive: 'calciumHydroxide',
        gramsPerL: mixGPerL(useDkhPerDay),
      }),
    },
    ...(everyDays > 0 && { waterChanges: { percent: 15, everyDays } }),
  });
  return carrier === 'pump' ? { ...tank, dosers: pair(tank) } : tank;
}
