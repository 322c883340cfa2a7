import type { Scenario } from '../../../shared/scenario/schema';

/** The morning hour of what is poured in by hand. */
export const MORNING_HOUR = 9;

/** The day of the first morning. What is due at the very moment a tank is taken over was done before it: at nine it is tomorrow's. */
export const firstMorning = ({ clockHour }: Scenario['start']): 1 | 2 =>
  clockHour < MORNING_HOUR ? 1 : 2;
