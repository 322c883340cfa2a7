import { spoken } from '../spoken';
import { en } from './en';

/** The test log: its fields, its lines, and how a reading is judged. */
export const say = spoken?.log ?? en;
