import { spoken } from '../spoken';
import { en } from './en';

/** What a test log says of its tank, and what it cannot say. */
export const say = spoken?.fit ?? en;
