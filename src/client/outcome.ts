export type {
  Answer,
  Candidate,
  Correction,
  Effect,
  GasSolution,
  LogAnswer,
  LogDesk,
  TrialOutcome,
} from '../../workers/trial.worker';
