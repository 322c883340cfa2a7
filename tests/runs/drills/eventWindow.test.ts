import { expect, it } from 'vitest';
import { eventWindow } from '../../../src/drills/eventWindow';

const line = (firstH: number | undefined, backH: number | undefined, already = false) => ({
  ...{ firstH, backH, already },
});

it('opens on the failure: some hours before it, three days of it, or until all is back', () => {
  expect(eventWindow(50, [line(51, 60)], 336)).toEqual({ fromH: 44, toH: 122 });
  expect(eventWindow(50, [line(51, 200.3)], 336)).toEqual({ fromH: 44, toH: 201 });
  expect(eventWindow(2, [line(undefined, undefined)], 336)).toEqual({ fromH: 0, toH: 74 });
});

it('shows the end when a limit is not back, and never more than the trial', () => {
  expect(eventWindow(2, [line(3, undefined)], 336).toH).toBe(336);
  expect(eventWindow(2, [line(0, undefined, true)], 336).toH).toBe(74);
  expect(eventWindow(2, [line(3, 5)], 48).toH).toBe(48);
});
