import { say } from '../../shared/words/charts';
import { download } from '../files/download';
import { chartSvg, outHeight, OUT_WIDTH, type ChartOut } from './chartSvg';

/** Twice the size in each direction, for print. */
const SCALE = 2;

const fileName = (title: string, ending: string) =>
  `${
    title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'chart'
  }.${ending}`;

export function saveSvg(chart: ChartOut): void {
  download(fileName(chart.title, 'svg'), chartSvg(chart), 'image/svg+xml');
}

/** Lets the browser draw the SVG, and hands out what it drew. */
export async function savePng(chart: ChartOut): Promise<void> {
  const picture = new Image();
  const url = URL.createObjectURL(new Blob([chartSvg(chart)], { type: 'image/svg+xml' }));
  picture.src = url;
  await picture.decode();
  const canvas = document.createElement('canvas');
  canvas.width = OUT_WIDTH * SCALE;
  canvas.height = outHeight(chart) * SCALE;
  canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(url);
  const png = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!png) throw new Error(say.noPicture);
  download(fileName(chart.title, 'png'), png, 'image/png');
}
