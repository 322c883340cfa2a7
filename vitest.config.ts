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
    include: [
      'tests/{advice,drawing,reference,laws,runs,border,units,log,state,words}/**/*.test.ts',
    ],
  },
});
