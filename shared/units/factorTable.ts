import type { ExpressionProblem } from './expressionProblem';

/** Hours of a trial at which an expression is asked: every one, and the one after the last. */
export const hoursOf = (days: number): number => Math.ceil(days * 24) + 2;

export type FactorTable =
  | { readonly ok: true; readonly table: Float64Array | undefined }
  | { readonly ok: false; readonly problem: ExpressionProblem };

/**
 * An expression of `day` (since the start), `hour` (of the clock) and `t` (hours since the start)
 * as a table; undefined for the plain 1. The parser is loaded only when there is something to parse.
 */
export async function factorTable(
  text: string,
  days: number,
  clockHour: number,
): Promise<FactorTable> {
  if (text.trim() === '1') return { ok: true, table: undefined };
  const { sample } = await import('./timeExpression');
  return sample(text, hoursOf(days), clockHour);
}
