import { extent } from 'd3-array';
import { expect, it } from 'vitest';
import { chartSvg } from '../../src/charts/chartSvg';

/** A tank whose alkalinity swings by 0.4 dKH with the light. */
const swinging = (days: number) => {
  const values = Float64Array.from(
    { length: 24 * days + 1 },
    (_, hour) => 8 + 0.2 * Math.sin((2 * Math.PI * hour) / 24),
  );
  return chartSvg({
    ...{ title: 'alkalinity', unit: 'dKH', band: [7, 11], least: 0.5, assumes: [], clockHour: 0 },
    series: [
      { key: 'a', label: 'as it runs', className: 'ink-1', dash: [], values, colour: '#123456' },
    ],
    window: { fromH: 0, toH: 24 * days },
  });
};

/** From the highest to the lowest of the line itself, px. */
function heightOf(svg: string): number {
  const [, d = ''] = /<path d="([^"]+)" fill="none"/.exec(svg) ?? [];
  const [low = 0, high = 0] = extent([...d.matchAll(/,(-?[\d.]+)/g)], ([, y]) => Number(y));
  return high - low;
}

it('a picture of a week or more shows the mean of its days in a ribbon, and no teeth', () => {
  const [days, month] = [swinging(3), swinging(30)];
  expect(days).not.toContain('fill-opacity');
  expect(month.match(/fill-opacity/g)).toHaveLength(1);
  expect(heightOf(days)).toBeGreaterThan(20);
  expect(heightOf(month)).toBeLessThan(0.1 * heightOf(days));
});
