export { runDrill } from '../studies/drill/drillRun';
export { run, stateAfter } from './run';
export { TrialRun, type Run } from './trialRun';
export { sampledOptions } from './sampledOptions';
export { settle, type Settled } from './settle';
export type { TankState } from './tankState';
export { usualOptions, type SettledStart, type SimulationOptions } from './simulation';
