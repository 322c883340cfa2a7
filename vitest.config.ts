import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  plugins: [svelte()],
  test: {
    environment: 'node',
    setupFiles: ['tests/seed.ts'],
    include: ['tests/{reference,laws,runs,border,units,log,state}/**/*.test.ts'],
  },
});
