export type {
  Answer,
  Effect,
  GasSolution,
  LogAnswer,
  LogDesk,
  TrialOutcome,
} from '../../workers/trial.worker';
