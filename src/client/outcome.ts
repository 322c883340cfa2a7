export type {
  Design,
  Effect,
  EnsembleSummary,
  GasSolution,
  Layer,
  Lever,
  ResponseChoices,
  ResponseResult,
  TrialOutcome,
} from '../../workers/trial.worker';
