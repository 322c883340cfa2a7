export type { GasSolution, TrialOutcome } from '../../workers/trial.worker';
