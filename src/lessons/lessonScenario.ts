import { say } from '../../shared/words/lessonFrame';
import { scenarioOf } from '../../shared/scenario/write';
import type { Scenario, ScenarioFile } from '../../shared/scenario/schema';

type Own = Omit<ScenarioFile, 'type' | 'version' | 'place' | 'answer'>;

/** A lesson's tank: only what differs from a quiet one, which is neither fed nor grows. */
export const lessonScenario = (own: Own): Scenario =>
  scenarioOf({
    type: 'paper-reef/scenario',
    version: 5,
    place: say.place,
    topOff: { reservoirL: 30, refillEveryDays: 3, deadBandL: 0.1 },
    food: { gramsPerDay: 0 },
    ...own,
    corals: { growthPercentPerDay: 0, ...own.corals },
  });
