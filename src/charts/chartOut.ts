import { chartSvg, outHeight, OUT_WIDTH, type ChartOut } from './chartSvg';
import type { PictureOut } from './savePicture';

export { savePng, saveSvg } from './savePicture';

/** A chart as a picture that goes out of the page. */
export const pictureOf = (chart: ChartOut): PictureOut => ({
  ...{ title: chart.title, svg: chartSvg(chart) },
  ...{ width: OUT_WIDTH, height: outHeight(chart) },
});
