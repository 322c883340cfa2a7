import { scenarioOf } from '../../shared/scenario/write';

/** A tank of 300 L on one pump of soda ash. */
export const pair = scenarioOf({
  tank: { volumeL: 300, alkalinityDkh: 8.4 },
  corals: { useDkhPerDay: 1 },
  evaporation: { litresPerDay: 4 },
  dosers: [
    {
      ...{ name: 'soda', mlPerDay: 90, stockL: 0.5 },
      recipe: [{ additive: 'sodiumCarbonate', gramsPerL: 60 }],
    },
  ],
});
