import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { headers, metaPolicy } from './scripts/headers.mjs';
import { offlinePlugin } from './scripts/offline/offlinePlugin.mjs';

const standIn = (file: string) => fileURLToPath(new URL(file, import.meta.url));

const policyInBuiltPage: Plugin = {
  name: 'policy-in-built-page',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: metaPolicy },
      injectTo: 'head-prepend',
    },
  ],
};

/** Nobody reads in a worker: no dictionary is built into it, and nothing waits for one. */
const unspoken = (): Plugin => ({
  name: 'unspoken',
  load: (id) =>
    id.endsWith('/shared/words/spoken.ts') ? 'export const spoken = undefined;' : undefined,
});

export default defineConfig({
  base: './',
  resolve: {
    alias: {
      'd3-format': standIn('src/charts/noFormat.ts'),
      'd3-interpolate': standIn('src/charts/numbersBetween.ts'),
    },
  },
  plugins: [svelte(), policyInBuiltPage, offlinePlugin()],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // All that the first page needs in one file; without it a top-level await shatters it into twenty.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: 'first', test: /src\/app\/App\.svelte$/ },
            // Each piece is named in the first file, so what is fetched together is one.
            { name: 'fields', test: /src\/fields\/(?!onceRead|beingRead|fieldOf)/ },
          ],
        },
      },
    },
  },
  worker: { format: 'es', plugins: () => [unspoken()] },
  preview: { headers },
});
