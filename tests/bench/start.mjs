import { build } from 'vite';

const outDir = 'test-results/bench';

// Bundled as the page's engine is: run file by file through a loader it takes twice as long.
await build({
  configFile: false,
  logLevel: 'error',
  build: {
    ssr: true,
    outDir,
    target: 'es2022',
    rolldownOptions: {
      input: ['bench.ts', 'members.ts', 'against/against.ts'].map((name) => `tests/bench/${name}`),
      output: { entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' },
    },
  },
});
const file = process.argv.includes('--against') ? 'against' : 'bench';
await import(new URL(`../../${outDir}/${file}.mjs`, import.meta.url).href);
