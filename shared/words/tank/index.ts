import { spoken } from '../spoken';
import { en } from './en';

/** What is asked of a scenario, its tank and its start. */
export const say = spoken?.tank ?? en;
