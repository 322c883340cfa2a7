import { say } from '../../shared/words/charts';
import { download } from '../files/download';

/** Twice the size in each direction, for print. */
const SCALE = 2;

const fileName = (title: string, ending: string) =>
  `${
    title
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '') || 'chart'
  }.${ending}`;

/** An SVG as it goes out of the page, px. */
export interface PictureOut {
  readonly title: string;
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

export function saveSvg({ title, svg }: PictureOut): void {
  download(fileName(title, 'svg'), svg, 'image/svg+xml');
}

/** Lets the browser draw the SVG, and hands out what it drew. */
export async function savePng({ title, svg, width, height }: PictureOut): Promise<void> {
  const picture = new Image();
  const url = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
  picture.src = url;
  await picture.decode();
  const canvas = document.createElement('canvas');
  canvas.width = width * SCALE;
  canvas.height = height * SCALE;
  canvas.getContext('2d')!.drawImage(picture, 0, 0, canvas.width, canvas.height);
  URL.revokeObjectURL(url);
  const png = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!png) throw new Error(say.noPicture);
  download(fileName(title, 'png'), png, 'image/png');
}
