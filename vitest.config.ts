import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [svelte()],
  test: {
    environment: 'node',
    // By itself it would leave a core idle; the tests wait for nobody.
    maxWorkers: '100%',
    // A slow machine is no failure.
    testTimeout: 60_000,
    setupFiles: ['tests/seed.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'computes',
          // Nothing here leaves a trace behind: modules stay loaded, and warm, from file to file.
          isolate: false,
          include: ['tests/{advice,drawing,reference,laws,runs,units,log}/**/*.test.ts'],
        },
      },
      {
        extends: true,
        test: { name: 'keeps', include: ['tests/{border,state,words}/**/*.test.ts'] },
      },
    ],
  },
});
