import { writeFileSync } from 'node:fs';
import { twins, TWINS_OF_A_VARIANT } from '../log/twins/twins';
import type { Variant } from '../log/twins/variants';

/** The twins of one variant, in a process of their own: which, and the file to write them to. */
const [variant, file] = process.argv.slice(2);
writeFileSync(file!, JSON.stringify(twins(TWINS_OF_A_VARIANT, variant as Variant)));
