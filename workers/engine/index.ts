export { runDrill } from '../studies/drill/drillRun';
export { run, stateAfter, TrialRun, type Run } from './run';
export { sampledOptions } from './sampledOptions';
export { settle, type Settled } from './settle';
export type { TankState } from './tankState';
export { usualOptions, type SettledStart, type SimulationOptions } from './simulation';
