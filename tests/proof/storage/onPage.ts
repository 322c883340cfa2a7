import type { Page } from '@playwright/test';

/** What a window shows of its open tank, and what can be pressed there, in any language and unit. */
export interface Shown {
  readonly tank: string;
  /** The names that its readings were given, the latest first. */
  readonly names: readonly string[];
}

/** Every reading that the attack types is called by a note of its own. */
const NAME = 'n\\d+_\\d+_\\d+';

/** Presses something, and tells what was shown just before and just after: nothing else can come between. */
export const pressed = (page: Page, press: string): Promise<readonly [Shown, Shown] | undefined> =>
  page.evaluate(
    async ([selector, name]) => {
      const shown = () => ({
        tank: document.querySelector<HTMLSelectElement>('#tank')?.value ?? '',
        names: [
          ...document.querySelectorAll('section[aria-labelledby=readings-title] tbody tr'),
        ].flatMap((row) => new RegExp(name!).exec(row.textContent ?? '')?.[0] ?? []),
      });
      // At first only the latest twenty are shown.
      const showAll = async () => {
        const more = document.querySelector<HTMLButtonElement>(
          'section[aria-labelledby=readings-title] > button',
        );
        const rows = document.querySelectorAll(
          'section[aria-labelledby=readings-title] tbody th[scope=row]',
        );
        if (more && rows.length === 20) more.click();
        for (let i = 0; i < 5; i++) await Promise.resolve();
      };
      await showAll();
      const before = shown();
      if (selector === '') return [before, before] as const;
      const button = document.querySelector<HTMLButtonElement>(selector!);
      if (!button || button.disabled) return undefined;
      button.click();
      await showAll();
      await showAll();
      return [before, shown()] as const;
    },
    [press, NAME] as const,
  );

export const shownIn = async (page: Page): Promise<Shown> => (await pressed(page, ''))![1];

/** The levers of the bench that are turned, and what they show. */
export const LEVERS = [
  'evaporation-litresPerDay',
  'topOff-gramsPerL',
  'waterChanges-percent',
] as const;
export type Lever = (typeof LEVERS)[number];

/** Presses something on the bench, and tells which levers that has turned. */
export const turnedBy = (page: Page, press: string): Promise<readonly Lever[] | undefined> =>
  page.evaluate(
    async ([selector, levers]) => {
      const shown = () =>
        levers.map((lever) => document.querySelector<HTMLInputElement>(`#field-${lever}`)?.value);
      const button = document.querySelector<HTMLButtonElement>(selector);
      if (!button || button.disabled) return undefined;
      const before = shown();
      button.click();
      for (let i = 0; i < 5; i++) await Promise.resolve();
      const after = shown();
      return levers.filter((_, i) => before[i] !== after[i]);
    },
    [press, LEVERS] as const,
  );
