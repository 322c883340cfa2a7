import { acetateOxidation } from './acetateOxidation';
import { calcification } from './calcification';
import { denitrification } from './denitrification';
import { feeding } from './feeding';
import { formateOxidation } from './formateOxidation';
import { gasExchange } from './gasExchange';
import { reactorCo2, reactorMedia } from './calciumReactor';
import { nitrification } from './nitrification';
import { photosynthesis } from './photosynthesis';
import { precipitation } from './precipitation';
import type { ProcessKind } from './process';
import { refugium } from './refugium';
import { respiration } from './respiration';
import { unseenRespiration } from './unseenRespiration';
import { skeletonMagnesium, skeletonStrontium } from './skeletonIons';

/** Every process the tank can have. Order does not matter; a new one is one file and one line. */
export const processes: readonly ProcessKind[] = [
  calcification,
  skeletonMagnesium,
  skeletonStrontium,
  precipitation,
  photosynthesis,
  refugium,
  respiration,
  unseenRespiration,
  feeding,
  nitrification,
  denitrification,
  acetateOxidation,
  formateOxidation,
  reactorMedia,
  reactorCo2,
  gasExchange,
];
