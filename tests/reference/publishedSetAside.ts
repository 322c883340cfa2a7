const probe =
  'the pH of pure saturated limewater is not computed: seawater constants do not reach it';
const handbook =
  'handbook solubilities disagree by 5 to 15 % (erratum 4), and limewater strength is an input';

/** Rows of published.csv that are not checked, and why. */
export const publishedSetAside: Record<string, string> = {
  P010: 'silicate is not in the model: a reef tank holds too little to matter',
  P022: 'another source for the ammonium constant, from memory, on a pH scale not verified',
  P027: 'TEOS-10 is not used: density is EOS-80',
  P030: 'at 10 dbar: a tank is at 0 dbar',
  P031: 'at 10000 dbar: a tank is at 0 dbar',
  ...Object.fromEntries(
    [52, 54, ...range(56, 62), 63, ...range(64, 70), 72].map((n) => [row(n), probe]),
  ),
  ...Object.fromEntries(range(73, 77).map((n) => [row(n), handbook])),
};

function row(n: number): string {
  return `P${String(n).padStart(3, '0')}`;
}

function range(first: number, last: number): number[] {
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
}
