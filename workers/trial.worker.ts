import * as Comlink from 'comlink';
import { TrialDesk } from './trialDesk';

/** The door to the engine: all it does is done at the desk behind it. */
export type TrialDoor = TrialDesk;
export type { Answer } from './answer';
export type { DrillDesk, Members } from './drillDesk';
export type { Design, DesignQuestion } from './studies/drill/design';
export type { Lever } from './studies/drill/dump';
export type { MapQuestion } from './studies/drill/dumpMap';
export type { EnsembleSummary } from './studies/drill/ensembleSummary';
export type { Layer } from './studies/drill/layers';
export type { MemberResult } from './studies/drill/memberResult';
export type { ResponseResult } from './studies/drill/responses';
export type { ResponseChoices } from './studies/drill/responsePlans';
export type { Progress, TrialOutcome } from './trialDesk';
export type { AwayTold, DeliveryTold, LogDesk, Offered, TurnTold } from './logDesk';
export type { Delivered } from './studies/stock/delivered';
export type { NobodyLooks } from './studies/away/unnoticed';
export type { LogAnswer } from './studies/answerLog';
export type { RanUntil } from './studies/fit/turnedAt';
export type { Correction } from './studies/plan/correct';
export type { Nearest } from './studies/plan/nearest';
export type { Offer } from './studies/plan/offers';
export type { Reached } from './studies/turn/reaches';
export type { NearestTurn, Turned } from './studies/turn/turned';
export type { GasSolution } from './studies/solveGas';
export type { Effect } from './studies/whatDidIt';

Comlink.expose(new TrialDesk());
// Trap: what arrives while a dictionary is being fetched is lost, so the page waits for this.
postMessage('listening');
