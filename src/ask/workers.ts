import { openWorker } from './openWorker';
import { Pool } from './pool';

/** The workers of this page, as long as it is open; a realm without a navigator (Node) opens none. */
export const workers = new Pool(openWorker, globalThis.navigator?.hardwareConcurrency ?? 1);
