import { misses, type Check } from '../reference/check';
import { publishedSetAside } from '../reference/publishedSetAside';
import { twinMisses } from '../log/twins/misses';
import type { Twins } from '../log/twins/twins';
import type { LawFile } from './laws';
import { attackSection } from './attackSection';
import { mutationSection } from './mutation/mutationSection';
import type { Score } from './mutation/scores';
import type { Attacked } from './storage/attacked';
import { twinSection } from './twinSection';
import {
  GROUP_HEADERS,
  groupRows,
  PUBLISHED_HEADERS,
  publishedRow,
  table,
  type Grazing,
} from './tables';
import { conventions, notChecked, opening } from './words';

export interface Proof {
  readonly groups: readonly (readonly [title: string, readonly (readonly [string, Check[]])[]])[];
  readonly published: readonly Check[];
  readonly laws: readonly LawFile[];
  readonly grazing: readonly Grazing[];
  readonly twins: readonly Twins[];
  readonly mutation: readonly Score[];
  readonly attacks: readonly Attacked[];
  /** Attacks that were not tried. */
  readonly leftOut: readonly string[];
  readonly versions: Readonly<Record<string, string>>;
  readonly seed: number;
  readonly date: string;
}

export function failures({ groups, published, laws, twins, attacks }: Proof): string[] {
  const checks = [...groups.flatMap(([, parts]) => parts.flatMap(([, c]) => c)), ...published];
  const broken = laws.flatMap(({ name, tests }) =>
    tests.filter(({ passed }) => !passed).map(({ title }) => `${name}: ${title}`),
  );
  const attacked = attacks.flatMap(({ attack, broken: all }) =>
    all.map((what) => `${attack}: ${what}`),
  );
  return [...misses(checks), ...broken, ...attacked, ...twins.flatMap(twinMisses)];
}

function summary(proof: Proof): string {
  const checks = proof.groups.flatMap(([, parts]) => parts.flatMap(([, c]) => c));
  const tests = proof.laws.flatMap((law) => law.tests);
  const missed = failures(proof).length;
  return `${checks.length + proof.published.length} numbers were held against a number from outside or from arithmetic, and ${tests.length} tests of laws and whole runs were tried at full length with seed ${proof.seed}: ${missed === 0 ? 'all hold' : `**${missed} do not hold**`}. Made on ${proof.date} with ${Object.entries(
    proof.versions,
  )
    .map(([name, version]) => `${name} ${version}`)
    .join(', ')}.`;
}

const lawsTable = (laws: readonly LawFile[]) =>
  table(
    ['file', 'tests', 'passed'],
    laws.map(({ name, tests }) => [
      name,
      String(tests.length),
      `${tests.filter(({ passed }) => passed).length}`,
    ]),
  );

const grazingList = (grazing: readonly Grazing[]) =>
  grazing.length === 0
    ? 'No crossing of a limit was left out of that.'
    : `Left out, since pH there moves by less than 0.01 an hour and crosses at no sharp moment: ${grazing
        .map(({ name, limit, timeH }) => `${name} ${limit} at ${timeH.toFixed(1)} h`)
        .join('; ')}.`;

/** The page of proof, from what was run. */
export function page(proof: Proof): string {
  const sections = proof.groups.map(
    ([title, parts]) =>
      `## ${title}\n\n${table(
        GROUP_HEADERS,
        parts.flatMap(([name, checks]) => groupRows(name, checks)),
      )}`,
  );
  const setAside = Object.entries(publishedSetAside).map(([row, reason]) => [row, reason]);
  const reasons = [...new Set(setAside.map(([, reason]) => reason!))].map(
    (reason) => `- ${setAside.filter(([, r]) => r === reason).length}: ${reason}`,
  );
  return `${[
    opening,
    summary(proof),
    conventions,
    'Each row below gives the check that uses most of its tolerance. "Computed" means by another program or by arithmetic, "read" that the value was read in its source.',
    ...sections,
    grazingList(proof.grazing),
    `## Printed values, one by one\n\n${table(PUBLISHED_HEADERS, proof.published.map(publishedRow))}`,
    `Values of the same table that are set aside, and why:\n\n${reasons.join('\n')}`,
    twinSection(proof.twins),
    `## Laws and whole runs at full length\n\n${lawsTable(proof.laws)}`,
    mutationSection(proof.mutation),
    attackSection(proof.attacks, proof.leftOut),
    notChecked,
  ].join('\n\n')}\n`;
}
