/** "~8.4": nobody means more by it than 8.4. */
const ABOUT = /^\s*(?:[~≈]|ca\.?|about|etwa)\s*/iu;
const WITH_UNIT = /^([-+−]?[\d.,]+)\s*(?!e[-+]?\d)([\p{L}%°‰µ].*?)\s*$/iu;

/** What was typed, without a word for how sure it is. */
export const withoutAbout = (text: string): string => text.replace(ABOUT, '').trim();

/** A typed number apart: "~8,4 dKH" is "8,4" and "dKH". What is not so made is all digits. */
export function typedNumber(text: string): { readonly digits: string; readonly unit: string } {
  const bare = withoutAbout(text);
  const [, digits = bare, unit = ''] = WITH_UNIT.exec(bare) ?? [];
  return { digits, unit };
}
