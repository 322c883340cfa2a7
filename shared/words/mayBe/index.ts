import { spoken } from '../spoken';
import { en } from './en';

/** Where the tank of a plan may be. */
export const say = spoken?.mayBe ?? en;
