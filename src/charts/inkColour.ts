/** Inks on paper, as app.css has them for light: what goes out of the page is always on paper. */
const onPaper: Readonly<Record<string, string>> = {
  'ink-1': '#1d4f91',
  'ink-2': '#ad3f08',
  'ink-3': '#0a6654',
  'ink-4': '#7a3b86',
};

export const inkColour = (className: string): string => onPaper[className] ?? '#2a2823';
