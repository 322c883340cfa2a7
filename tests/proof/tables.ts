import { misses, type Check } from '../reference/check';

/** A crossing too slow to be timed. */
export interface Grazing {
  readonly name: string;
  readonly limit: string;
  readonly timeH: number;
}

const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

export const table = (headers: readonly string[], rows: readonly (readonly string[])[]): string =>
  [
    `| ${headers.join(' | ')} |`,
    `|${headers.map(() => '---').join('|')}|`,
    ...rows.map((row) => `| ${row.map(cell).join(' | ')} |`),
  ].join('\n');

export const number = (value: number): string =>
  value === 0 ? '0' : String(Number(value.toPrecision(4)));

const off = ({ got, expected }: Check) => Math.abs(got - expected);
/** How much of its tolerance a check uses; a tolerance of nothing allows nothing. */
const used = (check: Check) =>
  off(check) === 0 ? 0 : Number.isFinite(off(check)) ? off(check) / check.tolerance : Infinity;

const worstOf = (checks: readonly Check[]) =>
  checks.reduce((worst, check) => (used(check) > used(worst) ? check : worst));

const range = (values: readonly number[]) => {
  const [low, high] = [Math.min(...values), Math.max(...values)].map(number) as [string, string];
  return low === high ? low : `${low} to ${high}`;
};

const unitText = (unit: string) => (unit === '-' || unit === '1' ? '' : ` (${unit})`);

const verdict = (checks: readonly Check[]) => {
  const missed = misses(checks).length;
  return missed === 0 ? 'holds' : `**${missed} missed**`;
};

export const GROUP_HEADERS = [
  'what',
  'quantity',
  'source',
  'verified',
  'n',
  'expected',
  'worst difference',
  'tolerance there',
  'verdict',
];

/** One row for each quantity of a group, by the check that uses most of its tolerance. */
export function groupRows(name: string, checks: readonly Check[]): string[][] {
  const byQuantity = new Map<string, Check[]>();
  for (const check of checks) {
    const quantity = `${check.quantity}${unitText(check.unit)}`;
    byQuantity.set(quantity, [...(byQuantity.get(quantity) ?? []), check]);
  }
  const sameSource = new Set(checks.map(({ source }) => source)).size === 1;
  // A table of dozens of kinds of number is told by its worst row alone.
  const parts =
    byQuantity.size > 14 || !sameSource
      ? [[`${byQuantity.size} quantities`, checks] as const]
      : [...byQuantity.entries()];
  return parts.map(([quantity, part]) => {
    const worst = worstOf(part);
    const whole = part.length > 1 && byQuantity.size > 14;
    return [
      name,
      whole ? `${quantity}; worst: ${worst.quantity}` : quantity,
      sameSource ? worst.source : `${worst.source}, and others`,
      [...new Set(part.map(({ howVerified }) => howVerified))].join(', '),
      String(part.length),
      whole ? `${number(worst.expected)} (worst)` : range(part.map(({ expected }) => expected)),
      number(off(worst)),
      number(worst.tolerance),
      verdict(part),
    ];
  });
}

export const PUBLISHED_HEADERS = ['value', 'source', 'verified', 'printed', 'ours', '±', 'verdict'];

export const publishedRow = (check: Check): string[] => [
  `${check.quantity}${unitText(check.unit)}`,
  check.source,
  check.howVerified,
  String(check.expected),
  String(Number(check.got.toPrecision(7))),
  number(check.tolerance),
  verdict([check]),
];
