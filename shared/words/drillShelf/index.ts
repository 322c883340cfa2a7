import { spoken } from '../spoken';
import { en } from './en';

/** The drills that come with Paper Reef, by the names of their files. */
export const say = spoken?.drillShelf ?? en;
