/** How a trial is drawn: a hue (a CSS class carries it, light and dark) and a dash to double it. */
export interface Ink {
  readonly className: string;
  readonly dash: readonly number[];
}

export const inks: readonly Ink[] = [
  { className: 'ink-1', dash: [] },
  { className: 'ink-2', dash: [7, 3] },
  { className: 'ink-3', dash: [2, 3] },
  { className: 'ink-4', dash: [10, 3, 2, 3] },
];

export const MOST_TRIALS = inks.length;
