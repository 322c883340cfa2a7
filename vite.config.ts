import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';
import { headers, metaPolicy } from './scripts/headers.mjs';

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

// The size limit leaves out lazy-*: what is imported statically can never take that name.
const chunkFileNames = ({ isDynamicEntry }: { isDynamicEntry: boolean }) =>
  isDynamicEntry ? 'assets/lazy-[name]-[hash].js' : 'assets/[name]-[hash].js';

export default defineConfig({
  base: './',
  plugins: [svelte(), policyInBuiltPage],
  build: {
    target: 'es2022',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { output: { chunkFileNames } },
  },
  worker: { format: 'es', rolldownOptions: { output: { chunkFileNames } } },
  preview: { headers },
});
