export { parseScenario, parseScenarioText, type Parsed } from './parse';
export type { Problem } from './problem';
export { sentence } from './sentence';
export { SCENARIO_TYPE, SCENARIO_VERSION, type Scenario, type ScenarioFile } from './schema';
export { scenarioOf, scenarioText } from './write';
