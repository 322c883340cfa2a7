import { defineConfig } from 'eslint/config';
import svelte from 'eslint-plugin-svelte';
import ts from 'typescript-eslint';
import { border } from './scripts/lint/border.mjs';
import {
  everywhere,
  inShared,
  inWorkers,
  seenByImpliedEval,
  writesNumbers,
} from './scripts/lint/bans.mjs';
import svelteConfig from './svelte.config.js';

export default defineConfig(
  { ignores: ['dist/', 'test-results/'] },
  ts.configs.recommended,
  svelte.configs.recommended,
  svelte.configs.prettier,
  {
    files: ['**/*.svelte', '**/*.svelte.ts'],
    languageOptions: {
      parserOptions: { parser: ts.parser, extraFileExtensions: ['.svelte'], svelteConfig },
    },
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  { languageOptions: { globals: seenByImpliedEval }, rules: everywhere },
  { files: ['workers/**'], rules: inWorkers },
  { files: ['shared/**'], ignores: ['shared/words/language.ts'], rules: inShared },
  {
    files: ['shared/**', 'workers/**', 'src/**'],
    ignores: ['shared/units/digits.ts'],
    rules: writesNumbers,
  },
  {
    files: ['shared/**', 'workers/**', 'src/**'],
    plugins: { reef: { rules: { border } } },
    rules: { 'reef/border': 'error' },
  },
);
