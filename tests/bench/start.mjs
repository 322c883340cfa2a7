import { bundle } from './bundle.mjs';

const outDir = 'test-results/bench';

await bundle(
  ['bench.ts', 'members.ts', 'against/against.ts'].map((name) => `tests/bench/${name}`),
  outDir,
);
const file = process.argv.includes('--against') ? 'against' : 'bench';
await import(new URL(`../../${outDir}/${file}.mjs`, import.meta.url).href);
