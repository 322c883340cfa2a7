export { runDrill } from '../studies/drill/drillRun';
export { run, TrialRun, type Run } from './run';
export { sampledOptions } from './sampledOptions';
export { settle, type Settled } from './settle';
export { usualOptions, type SettledStart, type SimulationOptions } from './simulation';
