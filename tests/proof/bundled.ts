import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import type { Attacked } from './storage/attacked';

/** Licences under which anybody may pass the page on as it is. */
const FREE = /^\(?(MIT|ISC|BSD-[23]-Clause|Apache-2\.0|0BSD|OFL-1\.1)( OR [\w.-]+)*\)?$/;

interface Lock {
  readonly packages: Readonly<Record<string, { dev?: boolean; version?: string }>>;
}

/** Whatever may be built into the page, and its licence as its own package says it. */
export function licencesChecked(): Attacked {
  const root = new URL('../../', import.meta.url);
  const read = (name: string) => JSON.parse(readFileSync(new URL(name, root), 'utf8')) as never;
  const { packages } = read('package-lock.json') as Lock;
  const bundled = Object.keys(packages).filter((name) => name !== '' && !packages[name]!.dev);
  const licences = bundled.map((name) => {
    const { license } = read(`${name}/package.json`) as { license?: string };
    return [name.replace(/.*node_modules\//, ''), license ?? 'none'] as const;
  });
  const kinds = [...new Set(licences.map(([, licence]) => licence))];
  const count = (kind: string) => licences.filter(([, licence]) => licence === kind).length;
  return {
    attack: 'licences of what may be built into the page',
    tried: bundled.length,
    broken: licences.filter(([, licence]) => !FREE.test(licence)).map((one) => one.join(': ')),
    figures: kinds.map((kind) => `${kind} ${count(kind)}`).join(', '),
  };
}

interface Audit {
  readonly metadata?: { readonly vulnerabilities: Readonly<Record<string, number>> };
}

/** What the registry knows against the packages of the lock file; it may not answer. */
export function audited(): Attacked {
  const attack = 'npm audit of everything in package-lock.json';
  let text = '';
  try {
    text = execFileSync('npm', ['audit', '--json'], { encoding: 'utf8', timeout: 60_000 });
  } catch (error) {
    // It ends with an error where it has found something, too.
    text = (error as { stdout?: string }).stdout ?? '';
  }
  const found = (JSON.parse(text || '{}') as Audit).metadata?.vulnerabilities;
  if (!found) return { attack, tried: 0, broken: [], figures: 'the registry did not answer' };
  const { total = 0, ...grades } = found;
  const told = Object.entries(grades).map(([grade, count]) => `${count} ${grade}`);
  return {
    attack,
    tried: 1,
    broken: total > 0 ? [told.join(', ')] : [],
    figures: `${total} found`,
  };
}
