/** One number of ours held against one number from outside. */
export interface Check {
  id: string;
  quantity: string;
  source: string;
  howVerified: 'read' | 'computed' | 'from memory' | 'common practice';
  expected: number;
  got: number;
  tolerance: number;
  unit: string;
}

/** What is outside its tolerance, one readable line each; a number that is not finite is a miss. */
export function misses(checks: readonly Check[]): string[] {
  return checks
    .filter((c) => !(Math.abs(c.got - c.expected) <= c.tolerance))
    .map(
      (c) =>
        `${c.id} ${c.quantity}: got ${c.got}, expected ${c.expected} ± ${c.tolerance} ${c.unit}`,
    );
}
