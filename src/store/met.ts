const KEY = 'paper-reef has met you';

/** Whether this reader has skipped or answered the first questions. */
export function hasMet(): boolean {
  try {
    return localStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
}

/** The first questions are asked again. */
export function forgetMeeting(): void {
  try {
    localStorage.removeItem(KEY);
  } catch {
    // Storage refused: nothing was remembered.
  }
}

export function rememberMeeting(): void {
  try {
    localStorage.setItem(KEY, 'yes');
  } catch {
    // Storage refused: the questions come again, and can be skipped again.
  }
}
