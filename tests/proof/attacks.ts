import { audited, licencesChecked } from './bundled';
import { madeInChild } from './inChild';
import { kept } from './kept';
import { servedAttack } from './served';
import type { Attacked } from './storage/attacked';

const names = ['windows', 'kills', 'records', 'conditions', 'offline'] as const;

const asked = process.env.ATTACKS?.split(',');
/** Those in a browser take an hour of a machine to themselves: ATTACKS=kills,records tries these alone. */
const isAsked = (name: string) => asked?.includes(name) ?? true;
/** What this run leaves out: the page of proof says so. */
export const leftOut: readonly string[] = names.filter((name) => !isAsked(name));

/** The attacks at full length, one after the other: each wants the machine for itself. */
export async function attacked(seed: number): Promise<Attacked[]> {
  const came: Attacked[] = [];
  for (const name of names.filter(isAsked)) {
    const make = () =>
      madeInChild<Attacked[]>((file) => [
        'tsx',
        ...['tests/proof/storage/attack.ts', '--only', name, '--seed', String(seed), '--out', file],
      ]);
    // What is attacked is the page as it is built; how, is in the name of what is kept of it.
    const how = 'tests/proof/storage/attack.ts';
    came.push(...(await kept(`attack ${name}`, ['src/app/App.svelte', how], seed, make)));
  }
  return [...came, await servedAttack(), licencesChecked(), audited()];
}
