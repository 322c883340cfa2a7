import { spoken } from '../spoken';
import { en } from './en';

/** What is asked of corals, photosynthesis, food, filter and precipitation. */
export const say = spoken?.life ?? en;
