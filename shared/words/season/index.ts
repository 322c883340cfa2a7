import { spoken } from '../spoken';
import { en } from './en';

/** Calcium, magnesium and salinity over months: why they moved, what to add, what holds them. */
export const say = spoken?.season ?? en;
