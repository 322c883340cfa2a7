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
      input: ['tests/bench/bench.ts', 'tests/bench/members.ts'],
      output: { entryFileNames: '[name].mjs', chunkFileNames: '[name].mjs' },
    },
  },
});
await import(new URL(`../../${outDir}/bench.mjs`, import.meta.url).href);
