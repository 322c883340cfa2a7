import { spoken } from '../spoken';
import { en } from './en';

/** Headline, pages, and how things are shown. */
export const say = spoken?.site ?? en;
