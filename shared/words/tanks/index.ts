import { spoken } from '../spoken';
import { en } from './en';

/** The shelf of tanks: all of them at a glance. */
export const say = spoken?.tanks ?? en;
