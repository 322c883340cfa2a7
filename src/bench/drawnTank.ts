import { flushSync, mount, unmount } from 'svelte';
import type { DisplayUnits } from '../../shared/units/display';
import { paintedSvg } from '../drawing/paintedSvg';
import StillTank from '../drawing/StillTank.svelte';
import type { Scenario } from '../../shared/scenario/schema';
import type { Trace } from '../../shared/trace/trace';

interface Drawn {
  readonly svg: string;
  /** The same in sentences. */
  readonly spoken: string;
}

/** The tank at an hour, drawn on paper beside the page, as a text of its own. */
export function drawnTank(
  trace: Trace,
  scenario: Scenario,
  timeH: number,
  display: DisplayUnits,
): Drawn {
  const target = document.createElement('div');
  target.className = 'visually-hidden';
  document.body.append(target);
  const still = mount(StillTank, { target, props: { trace, scenario, timeH, display } });
  flushSync();
  const drawing = target.querySelector('svg')!;
  const drawn = { svg: paintedSvg(drawing), spoken: drawing.getAttribute('aria-label') ?? '' };
  void unmount(still);
  target.remove();
  return drawn;
}
