import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { mergeConfig, type Plugin } from 'vitest/config';
import { BaseSequencer, type TestModule, type TestSpecification } from 'vitest/node';
import own from '../../../vitest.config';
import type { Mutant } from './mutant';
import { withMutant } from './mutant';

/** What is tried: the tests in their order, and the mutant, if any. */
export interface Trial {
  readonly tests: readonly string[];
  readonly mutant?: Mutant;
}

const trial = JSON.parse(readFileSync(process.env.TRIAL!, 'utf8')) as Trial;
const isMutated = (id: string) => relative('.', id.split('?')[0]!) === trial.mutant?.fileName;

/** Puts the mutant in as its file is read; no file is written. */
const mutated: Plugin = {
  name: 'mutated',
  enforce: 'pre',
  transform: (code, id) => (isMutated(id) ? withMutant(code, trial.mutant!) : undefined),
  // Modules are kept from run to run by what their files say; this one says something else.
  configureVitest: ({ experimental_defineCacheKeyGenerator: keyOf }) =>
    keyOf(({ id }) => (isMutated(id) ? false : undefined)),
};

class InOrder extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const place = ({ moduleId }: TestSpecification) => trial.tests.indexOf(relative('.', moduleId));
    return files.toSorted((a, b) => place(a) - place(b));
  }
}

const say = (what: string, of: string, more = '') => console.log(`@${what} ${of} ${more}`);
const pathOf = ({ moduleId }: TestModule) => relative('.', moduleId);

const reporter = {
  onTestModuleQueued: (module: TestModule) => say('begun', pathOf(module)),
  onTestModuleEnd: (module: TestModule) =>
    say(module.ok() ? 'green' : 'red', pathOf(module), String(module.diagnostic().duration)),
  onTestRunEnd: (_: unknown, errors: readonly unknown[]) => {
    if (errors.length > 0) say('red', 'outside every test');
  },
};

export default mergeConfig(own, {
  plugins: [mutated],
  test: {
    reporters: [reporter],
    sequence: { sequencer: InOrder },
    experimental: { fsModuleCache: true },
  },
});
