import { molarMassGPerMol } from '../../../shared/seawater';
import { usualMostPerDay } from '../../../shared/recipe/mostPerDay';
import type { Scenario } from '../../../shared/scenario/schema';
import type { AdditiveId } from '../../../shared/species/additives';
import { usualOptions } from '../../../workers/engine/simulation';
import { firstDays } from '../../../workers/studies/season/firstDays';
import { type Metal } from '../../../workers/studies/season/metals';
import { season } from '../../../workers/studies/season/season';
import { SeasonTank } from '../../../workers/studies/season/seasonTank';
import type { Check } from '../../reference/check';
import { quietTank } from '../quietTank';

/** Written out by hand from the standard atomic weights (IUPAC, abridged): Ca 40.078, Mg 24.305,
 * Cl 35.45, S 32.06, O 15.999, H 1.008. */
const byHand: readonly { additive: AdditiveId; metal: Metal; fraction: number }[] = [
  // 40.078 / (40.078 + 2 × 35.45 + 2 × 18.015)
  { additive: 'calciumChlorideDihydrate', metal: 'calcium', fraction: 40.078 / 147.008 },
  { additive: 'calciumChloride', metal: 'calcium', fraction: 40.078 / 110.978 },
  // 24.305 / (24.305 + 2 × 35.45 + 6 × 18.015)
  { additive: 'magnesiumChlorideHexahydrate', metal: 'magnesium', fraction: 24.305 / 203.295 },
  // 24.305 / (24.305 + 32.06 + 4 × 15.999 + 7 × 18.015)
  { additive: 'magnesiumSulfateHeptahydrate', metal: 'magnesium', fraction: 24.305 / 246.466 },
];

const VOLUME_L = 300;
const RISE_MG_PER_L = 20;

/** What the study pours in a tank in which nothing else happens. */
function pouredGrams(additive: AdditiveId, metal: Metal): number {
  const now = quietTank({ tank: { volumeL: VOLUME_L, calciumMgPerL: 400, magnesiumMgPerL: 1300 } });
  const tank = new SeasonTank(now, 0, usualOptions);
  const raise = { [metal]: { to: tank.level(metal) + RISE_MG_PER_L, additive } };
  const first = firstDays(tank, { raise, salinityTo: undefined, mostPerDay: usualMostPerDay });
  return first.kind === 'first' ? first.poured[metal]!.gramsPerDay * first.days : NaN;
}

const massFractions = (): Check[] =>
  byHand.map(({ additive, metal, fraction }) => ({
    id: `season/${additive}`,
    quantity: `grams for ${RISE_MG_PER_L} mg/L in ${VOLUME_L} L`,
    source: 'IUPAC standard atomic weights, worked by hand',
    howVerified: 'computed',
    expected: (RISE_MG_PER_L * VOLUME_L) / 1000 / fraction,
    got: pouredGrams(additive, metal),
    // To 1 mg/L (calcium) or 3 (magnesium) is on the target, and three figures are weighed.
    tolerance: ((metal === 'calcium' ? 1 : 3) * VOLUME_L) / 1000 / fraction,
    unit: 'g',
  }));

/** Sodium bicarbonate and calcium chloride against corals: 2 NaHCO3 + CaCl2 → CaCO3 + 2 NaCl + CO2 + H2O. */
function pairTank(dkhPerDay: number): Scenario {
  const meqPerDay = dkhPerDay * 0.35665 * VOLUME_L;
  const pump = (name: string, additive: AdditiveId, gramsPerDay: number) => ({
    ...{ name, mlPerDay: 100, stockL: 20 },
    recipe: [{ additive, gramsPerL: gramsPerDay * 10 }],
  });
  return quietTank({
    days: 60,
    tank: { volumeL: VOLUME_L },
    corals: { useDkhPerDay: dkhPerDay },
    evaporation: { litresPerDay: 3 },
    topOff: { reservoirL: 1000, refillEveryDays: 0, deadBandL: 0.5 },
    dosers: [
      pump('one', 'sodiumBicarbonate', (meqPerDay * 84.007) / 1000),
      pump('two', 'calciumChlorideDihydrate', (meqPerDay * 147.008) / 2000),
    ],
  });
}

function tableSalt(): Check {
  const now = pairTank(0.5);
  const found = season(
    {
      ...{ plan: now, now, readings: [], ran: [], backDays: 1, useDkhPerDay: 0.5 },
      ...{ giveOrTakeDkhPerDay: 0, mostPerDay: usualMostPerDay },
      targets: { calcium: now.tank.calciumMgPerL, magnesium: now.tank.magnesiumMgPerL },
    },
    usualOptions,
  );
  const salinity = found.drifts.find(({ id }) => id === 'salinity')!;
  // 0.35665 meq/L for a dKH, a mole of NaCl (22.990 + 35.45 g) for each equivalent.
  const naclGPerL = (0.35665 / 1000) * molarMassGPerMol({ Na: 1, Cl: 1 }) * 0.5 * 180;
  return {
    id: 'season/two-part',
    quantity: 'salinity that a bicarbonate pair brings in 180 days at 0.5 dKH a day',
    source: '2 NaHCO3 + CaCl2 → CaCO3 + 2 NaCl + CO2 + H2O, by hand',
    howVerified: 'computed',
    // As g/kg of water of 1.0235 kg/L, 35.165 g/kg to salinity 35.
    expected: naclGPerL / 1.0235 / (35.16504 / 35),
    got: salinity.after[1] - salinity.now,
    // The day's mean, what alkalinity gains on the way, and the water that the salt displaces.
    tolerance: 0.06,
    unit: 'S',
  };
}

export const seasonSaltsChecks = (): Check[] => [...massFractions(), tableSalt()];
