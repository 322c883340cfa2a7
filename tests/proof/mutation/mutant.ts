/** A change that StrykerJS would make to one place of a file; positions count from 0. */
export interface Mutant {
  readonly fileName: string;
  readonly mutatorName: string;
  readonly replacement: string;
  readonly location: { readonly start: Position; readonly end: Position };
}

interface Position {
  readonly line: number;
  readonly column: number;
}

const offset = (text: string, { line, column }: Position): number =>
  text
    .split('\n')
    .slice(0, line)
    .reduce((sum, before) => sum + before.length + 1, column);

/** What stands there without the mutant. */
export const originalOf = (text: string, { location }: Mutant): string =>
  text.slice(offset(text, location.start), offset(text, location.end));

const isStatement = ({ mutatorName, replacement }: Mutant) =>
  mutatorName === 'BlockStatement' || /^(case\b|default:|for\b)/.test(replacement);

/** The file with the mutant in it. An expression stays one by its brackets: `a && b && c` is not `a || b && c`. */
export function withMutant(text: string, mutant: Mutant): string {
  const { location, replacement } = mutant;
  return [
    text.slice(0, offset(text, location.start)),
    isStatement(mutant) ? replacement : `(${replacement})`,
    text.slice(offset(text, location.end)),
  ].join('');
}

const short = (code: string) => {
  const line = code.replaceAll(/\s+/g, ' ');
  return line.length > 80 ? `${line.slice(0, 77)}…` : line;
};

/** Where and what, in one line. */
export const told = (text: string, mutant: Mutant): string =>
  `${mutant.fileName}:${mutant.location.start.line + 1}: ${short(originalOf(text, mutant))} → ${short(mutant.replacement)}`;
