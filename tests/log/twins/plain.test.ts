import { describe } from 'vitest';
import { holdFor } from './twinLaws';
import { plainVariants } from './variants';

describe('plain logs whose truth the fit has not seen', () => holdFor(plainVariants));
