/** Letters that leave no mark on the screen, by their numbers. */
export const inSight = (text: string): string =>
  text.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, (letter) => {
    const number = letter.codePointAt(0)!.toString(16).toUpperCase();
    return `U+${number.padStart(4, '0')}`;
  });
