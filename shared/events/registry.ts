import { addition } from './addition';
import { carbonatedWater } from './carbonatedWater';
import type { EventKind } from './event';
import { extraChange } from './extraChange';
import { overdose } from './overdose';
import { waterChange } from './waterChange';

/** Every kind of event. A new one is one file and one line. */
export const eventKinds: readonly EventKind[] = [
  waterChange,
  addition,
  overdose,
  carbonatedWater,
  extraChange,
];
