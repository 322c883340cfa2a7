import { spoken } from '../spoken';
import { en } from './en';

/** Why a question to a worker came to nothing. */
export const say = spoken?.asking ?? en;
