import * as Comlink from 'comlink';
import { Desk } from './desk/desk';
import { questionNamed } from './desk/questions';

export type { Answer as WorkedOut, Failure as WorkFailure } from './desk/answer';
export type { Ensemble } from './desk/drillQuestions';
export type {
  AwayTold,
  DeliveryTold,
  Offered,
  SeasonTold,
  SteerTold,
  TurnTold,
} from './desk/logQuestions';
export type { Desk } from './desk/desk';
export type { AskedOf, GivenBy, ToldBy } from './desk/question';
export type { QuestionName, Questions } from './desk/questions';
export type { TrialOutcome } from './desk/runTrial';
export type { LogAnswer, Unanswered } from './studies/answerLog';
export type { NobodyLooks } from './studies/away/unnoticed';
export type { Design } from './studies/drill/design';
export type { Lever } from './studies/drill/dump';
export type { EnsembleSummary } from './studies/drill/ensembleSummary';
export type { Layer } from './studies/drill/layers';
export type { MemberResult } from './studies/drill/memberResult';
export type { ResponseChoices } from './studies/drill/responsePlans';
export type { ResponseResult } from './studies/drill/responses';
export type { Delivered } from './studies/stock/delivered';
export type { SupplyPace, UsedUp } from './studies/stock/paces';
export type { RanUntil } from './studies/fit/turnedAt';
export type { Correction } from './studies/plan/correct';
export type { Nearest } from './studies/plan/nearest';
export type { Offer } from './studies/plan/offers';
export type { GasSolution } from './studies/solveGas';
export type { Reached } from './studies/turn/reaches';
export type { NearestTurn, Turned } from './studies/turn/turned';
export type { Spread } from './studies/mightBe/spread';
export type { Effect } from './studies/whatDidIt';

Comlink.expose(new Desk(questionNamed));
