import { inks, type Ink } from '../store/inks';

/** Six lines on one chart: the four inks, and two of them again with dashes of their own. */
export const responseInks: readonly Ink[] = [
  ...inks,
  { className: 'ink-1', dash: [1, 4] },
  { className: 'ink-2', dash: [12, 2, 2, 2, 2, 2] },
];
