import { calcification } from './calcification';
import { feeding } from './feeding';
import { gasExchange } from './gasExchange';
import { nitrification } from './nitrification';
import { photosynthesis } from './photosynthesis';
import type { Process } from './process';
import { respiration } from './respiration';

/** Every process the tank can have. Order does not matter; a new one is one file and one line. */
// eslint-disable-next-line @typescript-eslint/no-explicit-any -- each process keeps its own settings type
export const processes: readonly Process<any>[] = [
  calcification,
  photosynthesis,
  respiration,
  feeding,
  nitrification,
  gasExchange,
];
