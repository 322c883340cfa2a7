import { DATABASE } from './databaseName';
import type { Tank } from './tanks';

/** A tank that a closing page had no time to save, and what it was when that page last saved it. */
interface LeftBehind {
  readonly tank: unknown;
  readonly base: unknown;
}

const PREFIX = `${DATABASE} unsaved `;
/** Up to 0.6.0 there was one place, without what the tank began as. */
const OLD_KEY = DATABASE;
/** Two windows may close at once. */
const ownWindow = crypto.randomUUID();

const keyOf = (id: string) => `${PREFIX}${ownWindow} ${id}`;

/** Leaves a tank where even a page that is being closed can write. */
export function leaveBehind(tank: Tank, base: Tank | undefined): void {
  try {
    localStorage.setItem(keyOf(tank.id), JSON.stringify({ tank, base } satisfies LeftBehind));
  } catch {
    // Storage refused or full: the last regular save remains.
  }
}

/** The page did not close after all, and has saved the tank itself. */
export function takeBack(id: string): void {
  try {
    localStorage.removeItem(keyOf(id));
  } catch {
    // Storage refused: there is nothing to take back.
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function keysLeft(): string[] {
  try {
    const keys = Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i)!);
    return keys.filter((key) => key === OLD_KEY || key.startsWith(PREFIX));
  } catch {
    // Storage refused: nothing was left there.
    return [];
  }
}

/** Saves what closed pages left. A copy goes only once its tank has been saved. */
export async function rescue(
  save: (left: LeftBehind, text: string) => Promise<void>,
): Promise<void> {
  for (const key of keysLeft()) {
    const text = localStorage.getItem(key) ?? '';
    const value = parsed(text);
    const left = key === OLD_KEY ? { tank: value, base: undefined } : (value as LeftBehind);
    await save(left ?? { tank: undefined, base: undefined }, text);
    if (localStorage.getItem(key) === text) localStorage.removeItem(key);
  }
}
