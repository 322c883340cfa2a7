import { spoken } from '../spoken';
import { en } from './en';

/** What is kept ready for a failure: protections, what was tested, the sheet on the wall. */
export const say = spoken?.ready ?? en;
