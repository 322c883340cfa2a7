import * as v from 'valibot';
import { say } from '../words/tank';
import { addition, doser, MOST_DOSERS, topOff, waterChanges } from './dosing';
import { fault, MOST_FAULTS, response } from './faults';
import { corals, filter, food, oxygen, photosynthesis, precipitation } from './life';
import { limits } from './limits';
import { calciumReactor, outflows } from './outflows';
import { required, words } from './quantity';
import { evaporation, gas, lights, room, temperaturePlan } from './surroundings';
import { start, tank } from './tank';

export const SCENARIO_TYPE = 'paper-reef/scenario';
export const SCENARIO_VERSION = 5;

/** The longest trial: five years, hour by hour. */
export const MOST_DAYS = 1830;
export const MOST_ADDITIONS = 200;

/**
 * The one description of a scenario. Types, the form, its help, the complaints about a bad file
 * and the JSON Schema all derive from it. Every number is in the unit that ends its name.
 */
export const scenarioSchema = v.strictObject({
  type: v.literal(SCENARIO_TYPE),
  version: v.literal(SCENARIO_VERSION),
  title: words(say.scenario.title, 120),
  place: v.optional(words(say.scenario.place, 200), ''),
  question: v.optional(words(say.scenario.question, 400), ''),
  answer: v.optional(words(say.scenario.answer, 600), ''),
  days: required({
    ...say.scenario.days,
    unit: 'days',
    min: 0.05,
    max: MOST_DAYS,
    slider: [1, 180],
    step: 1,
  }),
  tank,
  start: v.optional(start, {}),
  temperaturePlan,
  corals: v.optional(corals, {}),
  photosynthesis: v.optional(photosynthesis, {}),
  food: v.optional(food, {}),
  oxygen: v.optional(oxygen, {}),
  filter: v.optional(filter, {}),
  precipitation: v.optional(precipitation, {}),
  room: v.optional(room, {}),
  gas: v.optional(gas, {}),
  lights: v.optional(lights, {}),
  evaporation: v.optional(evaporation, {}),
  topOff: v.optional(topOff, {}),
  dosers: v.optional(
    v.pipe(v.array(doser), v.maxLength(MOST_DOSERS), v.title(say.scenario.dosers)),
    [],
  ),
  waterChanges: v.optional(waterChanges, {}),
  calciumReactor: v.optional(calciumReactor, {}),
  outflows: v.optional(outflows, {}),
  additions: v.optional(
    v.pipe(v.array(addition), v.maxLength(MOST_ADDITIONS), v.title(say.scenario.additions)),
    [],
  ),
  faults: v.optional(
    v.pipe(v.array(fault), v.maxLength(MOST_FAULTS), v.title(say.scenario.faults)),
    [],
  ),
  responses: v.optional(
    v.pipe(v.array(response), v.maxLength(MOST_FAULTS), v.title(say.scenario.responses)),
    [],
  ),
  limits: v.optional(limits, {}),
});

export type ScenarioFile = v.InferInput<typeof scenarioSchema>;
export type Scenario = v.InferOutput<typeof scenarioSchema>;
