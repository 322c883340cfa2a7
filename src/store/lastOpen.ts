const KEY = 'paper-reef current tank';

/** Which tank was open last. */
export function lastOpen(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    // Storage refused: nothing is remembered.
    return null;
  }
}

export function keepOpen(id: string): void {
  try {
    localStorage.setItem(KEY, id);
  } catch {
    // Storage refused: the first tank opens next time.
  }
}
