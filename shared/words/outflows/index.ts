import { spoken } from '../spoken';
import { en } from './en';

/** What is asked of losses and of a calcium reactor. */
export const say = spoken?.outflows ?? en;
