/** As it begins a sentence; pH stays pH. */
export const asSentence = (text: string): string =>
  text.startsWith('pH') ? text : `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
