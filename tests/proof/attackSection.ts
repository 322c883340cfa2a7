import type { Attacked } from './storage/attacked';
import { table } from './tables';

const row = ({ attack, tried, broken, figures }: Attacked): string[] => [
  attack,
  String(tried),
  broken.length === 0 ? '0' : `**${broken.length}**`,
  figures,
];

/** What was done to a browser’s keeping, and to what is served, on purpose. */
export function attackSection(attacks: readonly Attacked[], leftOut: readonly string[]): string {
  const rows = table(['attack', 'tried', 'broken', 'beside it'], attacks.map(row));
  const broken = attacks.flatMap(({ attack, broken: all }) =>
    all.map((what) => `- ${attack}: ${what}`),
  );
  const without = leftOut.length === 0 ? '' : `Not tried in this run: ${leftOut.join(', ')}.`;
  return `## Attacks on what is kept and what is served\n\nIn Chromium, by seed. What was shown as saved must be there afterwards, or be put aside with a sentence, and can be saved into a file; no page is blank, shows NaN or logs an error that nobody caught; no window silently undoes another. A reading is owed from half a second after it was shown.\n\n${[rows, broken.join('\n'), without].filter(Boolean).join('\n\n')}`;
}
