import { spoken } from '../spoken';
import { en } from './en';

/** The test log as it is kept: its fields and its settings. */
export const say = spoken?.log ?? en;
