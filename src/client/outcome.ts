export type {
  Answer,
  Candidate,
  Correction,
  Effect,
  GasSolution,
  LogAnswer,
  TrialOutcome,
} from '../../workers/trial.worker';
