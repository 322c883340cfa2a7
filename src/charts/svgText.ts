import { fixed } from '../../shared/units/digits';

/** A text as it may stand in XML. */
export const escaped = (text: string): string =>
  text
    // A control character would make the picture unreadable as XML.
    .replace(/[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|[\ud800-\udbff](?![\udc00-\udfff])/g, '')
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/>/g, '&gt;')
    .replace(/"/g, '&quot;');

/** A line of writing in a picture that goes out of the page. */
export const svgText = (x: number, y: number, words: string, more = '') =>
  `<text x="${fixed(x, 1)}" y="${fixed(y, 1)}" ${more}>${escaped(words)}</text>`;
