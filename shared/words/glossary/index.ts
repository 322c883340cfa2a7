import { spoken } from '../spoken';
import { en } from './en';

/** Every word of the page with its sentence. */
export const say = spoken?.glossary ?? en;
