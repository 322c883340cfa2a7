import { spoken } from '../spoken';
import { en } from './en';

/** Why a verdict is what it is, and what else is known. */
export const say = spoken?.reasons ?? en;
