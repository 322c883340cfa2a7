import { area, line } from 'd3-shape';
import { timeMarks } from './axisMarks';
import { isLongView, rowADay } from './byDay';
import { rowsIn, scalesFor, type Frame, type Series } from './chartScales';
import { dayMean } from './dayMean';
import { dayRange } from './dayRange';
import { decimate, type Point } from './decimate';
import { tickText } from './tickText';
import { spreadLabels } from './endLabels';
import { escaped, svgText as text } from './svgText';
import type { TimeWindow } from './timeWindow';

/** A chart as it goes out of the page: everything that a stranger needs stands in it. */
export interface ChartOut {
  readonly title: string;
  readonly unit: string;
  readonly series: readonly (Series & { readonly colour: string })[];
  readonly window: TimeWindow;
  readonly clockHour: number | undefined;
  readonly band: readonly [number, number] | undefined;
  readonly least: number;
  readonly assumes: readonly string[];
}

export const OUT_WIDTH = 960;
const PLOT_BOTTOM = 470;
const LINE_PX = 18;

export const outHeight = ({ assumes }: ChartOut): number => 500 + LINE_PX * (assumes.length + 1);

/** The chart as an SVG file, on paper whatever the theme. */
export function chartSvg(chart: ChartOut): string {
  const { title, unit, series, window, clockHour, band, least, assumes } = chart;
  const height = outHeight(chart);
  const frame: Frame = { width: OUT_WIDTH, height: 500, left: 60, right: 150, top: 60, bottom: 30 };
  const { x, y } = scalesFor(series, window, frame, least, band);
  const right = OUT_WIDTH - frame.right;
  const inside = (value: number) => Math.max(frame.top, Math.min(PLOT_BOTTOM, y(value)));
  const path = line<Point>(
    (point) => point.x,
    (point) => y(point.y),
  ).digits(1);
  const ribbon = area<{ x: number; range: [number, number] }>(
    (day) => day.x,
    (day) => inside(day.range[0]),
    (day) => inside(day.range[1]),
  ).digits(1);
  // As on the page: of a week and more a ribbon by day, and its mean.
  const isLong = isLongView(window);
  const ribbonOf = (values: Float64Array, from: number, to: number) =>
    ribbon(rowADay(from, to).map((row) => ({ x: x(row), range: dayRange(values, row) })));
  const all = series.map((one) => ({ ...one, shown: isLong ? dayMean(one.values) : one.values }));
  const drawn = all.flatMap(({ values, shown, dash, colour }) => {
    const [from, to] = rowsIn(window, values.length);
    const d = path(decimate((row) => x(row), shown, from, to, right - frame.left));
    return [
      isLong
        ? `<path d="${ribbonOf(values, from, to)}" fill="${colour}" fill-opacity="0.22"/>`
        : '',
      `<path d="${d}" fill="none" stroke="${colour}" stroke-width="2" stroke-dasharray="${dash.join(' ')}"/>`,
    ];
  });
  const ends = spreadLabels(
    all.map((s) => ({ ...s, y: inside(s.shown[rowsIn(window, s.shown.length)[1]]!) })),
    16,
    frame.top,
    PLOT_BOTTOM,
  );
  const written = tickText(y, 6);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${OUT_WIDTH}" height="${height}" viewBox="0 0 ${OUT_WIDTH} ${height}" font-family="Georgia, serif" font-size="13" fill="#2a2823">`,
    `<title>${escaped(title)}</title>`,
    `<rect width="${OUT_WIDTH}" height="${height}" fill="#faf6ec"/>`,
    text(20, 34, unit ? `${title}, ${unit}` : title, 'font-size="20"'),
    band
      ? `<rect x="${frame.left}" y="${inside(band[1])}" width="${right - frame.left}" height="${Math.max(0, inside(band[0]) - inside(band[1]))}" fill="#dfeadf"/>`
      : '',
    ...y
      .ticks(6)
      .flatMap((tick) => [
        `<line x1="${frame.left}" x2="${right}" y1="${y(tick)}" y2="${y(tick)}" stroke="#d8cfb8"/>`,
        text(frame.left - 8, y(tick) + 4, written(tick), 'text-anchor="end"'),
      ]),
    ...timeMarks(window, OUT_WIDTH, clockHour).map(({ at, label }) =>
      text(x(at), PLOT_BOTTOM + 22, label, 'text-anchor="middle"'),
    ),
    ...drawn,
    ...ends.map(({ label, colour, y: at }) => text(right + 8, at + 4, label, `fill="${colour}"`)),
    ...assumes.map((words, i) => text(20, 520 + LINE_PX * i, words, 'fill="#676156"')),
    '</svg>',
  ].join('\n');
}
