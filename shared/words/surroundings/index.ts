import { spoken } from '../spoken';
import { en } from './en';

/** What is asked of room air, gas exchange, lights and evaporation. */
export const say = spoken?.surroundings ?? en;
