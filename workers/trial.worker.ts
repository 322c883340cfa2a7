import * as Comlink from 'comlink';
import { TrialDesk } from './trialDesk';

/** The door to the engine: all it does is done at the desk behind it. */
export type TrialDoor = TrialDesk;
export type { Answer, Progress, TrialOutcome } from './trialDesk';
export type { GasSolution } from './studies/solveGas';
export type { Effect } from './studies/whatDidIt';

Comlink.expose(new TrialDesk());
