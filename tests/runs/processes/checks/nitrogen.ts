import type { Check } from '../../../reference/check';
import { ammoniumAtStart, changeOver, equivalents, mol, onlyTank } from '../onlyTank';
import { usualOptions, type Simulation } from '../../../../workers/engine/simulation';
import { molarMassGPerMol } from '../../../../shared/seawater';
import { indexOf } from '../../../../shared/species/block';

const NITRATE_G = molarMassGPerMol({ N: 1, O: 3 });

const measures = {
  dkh: ({ view }: Simulation) => view.alkalinityDkh,
  nitrateMgPerL: ({ view }: Simulation) => view.mgPerL(indexOf.NO3, NITRATE_G),
};

/** Alkalinity lost with each mg/L of nitrate that piles up. */
function dkhPerMgNitrate(tank: Simulation, hours: number): number {
  const change = changeOver(tank, hours, measures);
  return -change.dkh / change.nitrateMgPerL;
}

const fedTank = () =>
  onlyTank({
    days: 20,
    food: { gramsPerDay: 1, releasedPercent: 100, respiredPercent: 0, phosphorusPercent: 0 },
    filter: { nitrificationPerH: 5 },
  });

const ammoniumTank = () =>
  onlyTank({ days: 20, filter: { nitrificationPerH: 5 } }, usualOptions, [ammoniumAtStart(5)]);

function eqPerNitrateRemoved(): number {
  const tank = onlyTank({
    days: 20,
    tank: { nitrateMgPerL: 30 },
    filter: { denitrificationPerDay: 0.2 },
  });
  const change = changeOver(tank, 480, { eq: equivalents, no3: (t) => mol(t, 'NO3') });
  return -change.eq / change.no3;
}

export const nitrogenChecks = (): Check[] => [
  {
    id: 'nitrogen/from food',
    quantity: 'alkalinity that goes as nitrate piles up, from the nitrogen of food',
    source: 'one equivalent per mole: 0.016 meq/L per mg/L',
    howVerified: 'computed',
    ...{ expected: 0.0452, got: dkhPerMgNitrate(fedTank(), 480) },
    ...{ tolerance: 0.0001, unit: 'dKH per mg/L' },
  },
  {
    id: 'nitrogen/from ammonium',
    quantity: 'alkalinity that goes as nitrate piles up, from dissolved ammonium',
    source: 'two equivalents per mole: 0.032 meq/L per mg/L',
    howVerified: 'computed',
    ...{ expected: 0.0904, got: dkhPerMgNitrate(ammoniumTank(), 480) },
    ...{ tolerance: 0.0001, unit: 'dKH per mg/L' },
  },
  {
    id: 'nitrogen/denitrification',
    quantity: 'alkalinity given back as nitrate turns to nitrogen gas',
    source: 'Wolf-Gladrow et al. 2007',
    howVerified: 'computed',
    ...{ expected: 1, got: eqPerNitrateRemoved(), tolerance: 1e-6, unit: 'eq/mol' },
  },
];
