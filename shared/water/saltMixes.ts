import type { Scenario } from '../scenario/schema';

type Salt = Scenario['waterChanges']['salt'];

/** Two families of reef salt, as many keepers know them (common practice, no source). */
export const saltMixes: readonly Salt[] = [
  {
    name: 'low-alkalinity mix',
    alkalinityDkh: 7.5,
    calciumMgPerL: 420,
    magnesiumMgPerL: 1300,
    atSalinityPractical: 35,
  },
  {
    name: 'high-alkalinity mix',
    alkalinityDkh: 10.5,
    calciumMgPerL: 450,
    magnesiumMgPerL: 1380,
    atSalinityPractical: 35,
  },
];
