import { addition } from './addition';
import type { EventKind } from './event';
import { waterChange } from './waterChange';

/** Every kind of event. A new one is one file and one line. */
export const eventKinds: readonly EventKind[] = [waterChange, addition];
