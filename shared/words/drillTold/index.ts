import { spoken } from '../spoken';
import { en } from './en';

/** What happens in a drill, as its answer tells it. */
export const say = spoken?.drillTold ?? en;
