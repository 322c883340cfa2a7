import { say } from '../words/ledger';
import { atomicMassGPerMol } from '../seawater/atomicMasses';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

interface Settings {
  readonly molCarbonPerH: number;
  readonly nitrogenPerCarbon: number;
  readonly phosphorusPerCarbon: number;
  readonly respired: number;
  readonly released: number;
}

/** Food is eaten as it is given: carbon to CO2, nitrogen to ammonia, phosphorus to phosphate. */
export const feeding = defineProcess<Settings>({
  id: 'feeding',
  label: say.feeding,
  cites: ['commonPractice'],
  settings({ scenario: { food } }) {
    if (food.gramsPerDay === 0 || food.carbonPercent === 0) return null;
    const carbon = food.carbonPercent / atomicMassGPerMol.C;
    return {
      molCarbonPerH: (food.gramsPerDay * carbon) / 100 / 24,
      nitrogenPerCarbon: food.nitrogenPercent / atomicMassGPerMol.N / carbon,
      phosphorusPerCarbon: food.phosphorusPercent / atomicMassGPerMol.P / carbon,
      respired: food.respiredPercent / 100,
      released: food.releasedPercent / 100,
    };
  },
  reaction: (s) =>
    new Reaction({
      foodC: -1,
      DIC: s.respired,
      organicC: 1 - s.respired,
      foodN: -s.nitrogenPerCarbon,
      TAN: s.nitrogenPerCarbon * s.released,
      organicN: s.nitrogenPerCarbon * (1 - s.released),
      foodP: -s.phosphorusPerCarbon,
      PO4: s.phosphorusPerCarbon * s.released,
      organicP: s.phosphorusPerCarbon * (1 - s.released),
    }),
  rate: (_view, { molCarbonPerH }) => molCarbonPerH,
});
