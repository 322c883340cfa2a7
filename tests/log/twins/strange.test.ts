import { describe } from 'vitest';
import { holdFor } from './twinLaws';
import { plainVariants, variants } from './variants';

describe('logs whose truth the fit has not seen, with something amiss in them', () =>
  holdFor(variants.filter((variant) => !plainVariants.includes(variant))));
