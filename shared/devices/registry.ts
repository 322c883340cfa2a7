import { aeration } from './aeration';
import { continuousChange } from './continuousChange';
import type { DeviceKind } from './device';
import { dosers } from './dosers';
import { evaporation } from './evaporation';
import { lights } from './lights';
import { leak, skimming } from './outflows';
import { overflow } from './overflow';
import { topOff } from './topOff';

/** Every kind of device. A new one is one file and one line. */
export const deviceKinds: readonly DeviceKind[] = [
  aeration,
  lights,
  evaporation,
  topOff,
  dosers,
  continuousChange,
  skimming,
  leak,
  overflow,
];
