/** What a tree offers to be timed: copied into each of both, and bundled there. */
export { settle } from '../../../workers/engine/settle';
export { run } from '../../../workers/engine/run';
export { memberOptions, runMember } from '../../../workers/studies/drill/memberResult';
export { usualOptions } from '../../../workers/engine/simulation';
export { usualSpreads } from '../../../shared/verdict/spreads';
export { Stride } from '../../../workers/engine/stride';
export { TankView } from '../../../workers/engine/tankView';
export { answerLog, threePlans } from '../../../workers/studies';
export { parseScenarioText } from '../../../shared/scenario';
export { readColumn } from '../../../shared/trace';
