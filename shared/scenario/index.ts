export { parseScenario, parseScenarioText, type Parsed } from './parse';
export { sentence, type Problem } from './problem';
export { SCENARIO_TYPE, SCENARIO_VERSION, type Scenario, type ScenarioFile } from './schema';
export { scenarioOf, scenarioText } from './write';
