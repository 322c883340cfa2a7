import { chartSvg, outHeight, OUT_WIDTH, type ChartOut } from '../charts/chartSvg';
import { roomOf } from '../charts/fittedName';
import type { PictureOut } from '../charts/savePicture';
import { escaped, svgText } from '../charts/svgText';

/** A trial as one picture: what it says, the tank, and its course. */
export interface Share {
  readonly title: string;
  readonly headline: string;
  readonly stamp: string;
  readonly outside: boolean;
  /** The numbers of the verdict, in sentences. */
  readonly reasons: readonly string[];
  /** The drawn tank, with all that it looks like in it, and the same in sentences. */
  readonly tank: string;
  readonly spoken: string;
  readonly chart: ChartOut;
}

const LEFT = 24;
const HEAD_PX = 22;
const WORDS_PX = 15;
const TANK = { width: 420, height: 312 };
const ALARM = '#9c2a12';
const PENCIL = '#676156';

/** Words in lines that are no longer than there is room. */
function inLines(words: string, fontPx: number, roomPx: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const longer = [lines.at(-1), word].filter(Boolean).join(' ');
    if (lines.length > 0 && roomOf(longer, fontPx) <= roomPx) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

export function shareSvg(share: Share): PictureOut {
  const { title, headline, stamp, outside, reasons, tank, spoken, chart } = share;
  const ink = outside ? ALARM : PENCIL;
  const head = inLines(headline, HEAD_PX, OUT_WIDTH - 2 * LEFT);
  const stampY = 62 + (head.length + 1) * 28;
  const top = stampY + 24;
  const beside = LEFT + TANK.width + 24;
  const words = reasons
    .map((reason) => inLines(reason, WORDS_PX, OUT_WIDTH - beside - LEFT))
    .flatMap((lines, i) => (i === 0 ? lines : ['', ...lines]));
  const chartY = top + Math.max(TANK.height, 20 * (words.length + 1)) + 16;
  const height = chartY + outHeight(chart);
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${OUT_WIDTH}" height="${height}" viewBox="0 0 ${OUT_WIDTH} ${height}" font-family="Georgia, serif" fill="#2a2823" role="img">`,
    `<title>${escaped(`${title}: ${headline}`)}</title><desc>${escaped(spoken)}</desc>`,
    `<rect width="${OUT_WIDTH}" height="${height}" fill="#faf6ec"/>`,
    svgText(LEFT, 44, title, 'font-size="26" font-weight="bold"'),
    ...head.map((line, i) => svgText(LEFT, 82 + 28 * i, line, `font-size="${HEAD_PX}"`)),
    `<rect x="${LEFT}" y="${stampY - 20}" width="${Math.round(roomOf(stamp, WORDS_PX)) + 16}" height="27" fill="none" stroke="${ink}" stroke-width="${outside ? 3 : 1.5}"/>`,
    svgText(
      LEFT + 8,
      stampY - 1,
      stamp,
      `font-size="${WORDS_PX}" font-weight="bold" fill="${ink}"`,
    ),
    `<svg x="${LEFT}" y="${top}" width="${TANK.width}" height="${TANK.height}">${tank}</svg>`,
    ...words.map((line, i) => svgText(beside, top + 24 + 20 * i, line, `font-size="${WORDS_PX}"`)),
    `<svg y="${chartY}" width="${OUT_WIDTH}" height="${outHeight(chart)}">${chartSvg(chart)}</svg>`,
    '</svg>',
  ].join('\n');
  return { title, svg, width: OUT_WIDTH, height };
}
