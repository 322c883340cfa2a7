import type { DeviceKind } from './device';
import { dosers } from './dosers';
import { evaporation } from './evaporation';
import { lights } from './lights';
import { topOff } from './topOff';

/** Every kind of device. A new one is one file and one line. */
export const deviceKinds: readonly DeviceKind[] = [lights, evaporation, topOff, dosers];
