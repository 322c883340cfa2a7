export type { Effect, GasSolution, TrialOutcome } from '../../workers/trial.worker';
