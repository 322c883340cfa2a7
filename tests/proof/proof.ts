import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { publishedChecks } from '../reference/checks/published';
import { scenarioFiles, scenarioFromFile } from '../runs/scenarioFiles';
import type { Twins } from '../log/twins/twins';
import { variants } from '../log/twins/variants';
import { tightened } from '../runs/tightened';
import { attacked, leftOut } from './attacks';
import { groups } from './groups';
import { madeInChild } from './inChild';
import { kept } from './kept';
import { lawJobs, type LawFile } from './laws';
import { scores } from './mutation/scores';
import { failures, page, type Proof } from './page';
import { sideBySide } from './sideBySide';

const versionOf = (name: string): string =>
  JSON.parse(readFileSync(new URL(`../../${name}/package.json`, import.meta.url), 'utf8')).version;

const date = new Date().toISOString().slice(0, 10);
/** Another sample every day, and the same one for whoever repeats a day's proof. */
const seed = Number(process.env.LAW_SEED ?? date.replaceAll('-', ''));

const twinJobs = variants.map(
  (variant) => () =>
    kept<Twins>(`twins ${variant}`, 'tests/log/twins/twins.ts', seed, () =>
      madeInChild((file) => ['tsx', 'tests/proof/twinPart.ts', variant, file]),
    ),
);

// The longest first, as far as one knows: the advice leads, and the twins fill what is left of a core.
const laws = lawJobs(seed);
const made = await sideBySide<LawFile | Twins>([...laws, ...twinJobs], availableParallelism());

const proof: Proof = {
  date,
  seed,
  laws: (made.slice(0, laws.length) as LawFile[]).toSorted((a, b) => a.name.localeCompare(b.name)),
  groups: Object.entries(groups).map(([title, parts]) => [
    title,
    Object.entries(parts).map(([name, checks]) => [name, checks()] as const),
  ]),
  published: publishedChecks(),
  grazing: scenarioFiles.flatMap((name) =>
    tightened(scenarioFromFile(name)).grazing.map(({ limit, timeH }) => ({ name, limit, timeH })),
  ),
  twins: made.slice(laws.length) as Twins[],
  mutation: scores(),
  attacks: await attacked(seed % 10_000),
  leftOut,
  versions: {
    'Paper Reef': versionOf('.'),
    Node: process.versions.node,
    ...Object.fromEntries(
      ['vitest', 'fast-check', 'odex'].map((name) => [name, versionOf(`node_modules/${name}`)]),
    ),
  },
};

writeFileSync(new URL('../../TRUST.md', import.meta.url), page(proof));
const failed = failures(proof);
console.log(failed.length === 0 ? 'TRUST.md: everything holds.' : failed.join('\n'));
process.exitCode = failed.length === 0 ? 0 : 1;
