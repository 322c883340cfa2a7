import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { headers, metaPolicy } from './scripts/headers.mjs';
import { offlinePlugin } from './scripts/offline/offlinePlugin.mjs';

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

export default defineConfig({
  base: './',
  plugins: [svelte(), policyInBuiltPage, offlinePlugin()],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // All that the first page needs in one file; without it a top-level await shatters it into twenty.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [{ name: 'first', test: /src\/app\/App\.svelte$/ }],
        },
      },
    },
  },
  worker: { format: 'es' },
  preview: { headers },
});
