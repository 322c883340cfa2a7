import { readFileSync } from 'node:fs';
import { inSight } from '../../shared/scenario/inSight';

/** A title may hold what would steer the terminal: such letters are shown by their numbers. */
const plain = (text: string) => text.split('\n').map(inSight).join('\n');

export const print = (text: string): void => console.log(plain(text));

/** Ends with code 2 and every reason, one a line, on standard error. */
export function refuse(...reasons: string[]): never {
  console.error(plain(reasons.join('\n')));
  process.exit(2);
}

/** Refuses a file with all that is wrong with it. */
export function refuseFile(file: string, problems: readonly string[]): never {
  const count = `${problems.length} problem${problems.length > 1 ? 's' : ''}`;
  refuse(`${file}: ${count}.`, ...problems.map((problem) => `  ${problem}`));
}

/** The text of a file; ends with code 2 when it cannot be read. */
export function readText(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    return refuse(`${file}: could not be read. ${(error as Error).message}`);
  }
}

/** A reader that has seen enough, as `head` does, closes the pipe: no error. */
export function endWithReader(): void {
  process.stdout.on('error', ({ code }: NodeJS.ErrnoException) =>
    process.exit(code === 'EPIPE' ? 0 : 1),
  );
}
