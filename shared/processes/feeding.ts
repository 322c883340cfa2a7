import { say } from '../words/ledger';
import { atomicMassGPerMol } from '../seawater/atomicMasses';
import { Reaction } from '../species/reaction';
import { defineProcess } from './process';

interface Settings {
  readonly gramsPerH: number;
  /** Moles in one gram of dry food. */
  readonly carbon: number;
  readonly nitrogen: number;
  readonly phosphorus: number;
  readonly respired: number;
  readonly released: number;
}

/** Food is eaten as it is given: carbon to CO2, nitrogen to ammonia, phosphorus to phosphate. */
export const feeding = defineProcess<Settings>({
  id: 'feeding',
  label: say.feeding,
  role: 'life',
  cites: ['commonPractice'],
  settings({ scenario: { food } }) {
    if (food.gramsPerDay === 0) return null;
    return {
      gramsPerH: food.gramsPerDay / 24,
      carbon: food.carbonPercent / 100 / atomicMassGPerMol.C,
      nitrogen: food.nitrogenPercent / 100 / atomicMassGPerMol.N,
      phosphorus: food.phosphorusPercent / 100 / atomicMassGPerMol.P,
      respired: food.respiredPercent / 100,
      released: food.releasedPercent / 100,
    };
  },
  // One mole of this reaction is one gram of dry food.
  reaction: ({ carbon, nitrogen, phosphorus, respired, released }) =>
    new Reaction({
      foodC: -carbon,
      DIC: carbon * respired,
      organicC: carbon * (1 - respired),
      foodN: -nitrogen,
      TAN: nitrogen * released,
      organicN: nitrogen * (1 - released),
      foodP: -phosphorus,
      PO4: phosphorus * released,
      organicP: phosphorus * (1 - released),
    }),
  rate: (_view, { gramsPerH }) => gramsPerH,
});
