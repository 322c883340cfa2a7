import { momentH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';

type Fault = Pick<Scenario['faults'][number], 'day' | 'hour' | 'endsAfterH'>;
type Response = Pick<Scenario['responses'][number], 'day' | 'hour' | 'hours'>;

/** When something that fails, or is done about it, is over, h of the trial that starts at an hour of the clock. */
export const endOf = (thing: Fault | Response, clockHour: number): number =>
  momentH(thing, clockHour) + ('endsAfterH' in thing ? thing.endsAfterH : thing.hours);
