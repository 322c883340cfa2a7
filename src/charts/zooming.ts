import type { Zoom } from './zoomed';

interface Zooming {
  /** Undefined where a chart is looked at from one distance only. */
  readonly zoom: Zoom | undefined;
  /** The hour at a place of the chart, px from its left. */
  readonly hourAt: (x: number) => number;
  /** The stretch that a pressed mouse is drawn over, as it is drawn; none when it is let go. */
  readonly onbrush: (stretch: readonly [number, number] | undefined) => void;
}

/** A turn of the wheel by so many px doubles the distance. */
const DOUBLED_PX = 240;
/** A hand that presses is not quite still, px. */
const STILL_PX = 8;

/** Lets a chart be looked at more nearly: the wheel with Ctrl, so that the page still scrolls; two fingers; a pressed mouse. */
export const zooming = (asked: () => Zooming) => (chart: HTMLElement) => {
  const fingers = new Map<number, number>();
  let pressed: number | undefined;
  let drawn: number | undefined;
  const placeOf = ({ clientX }: MouseEvent) => clientX - chart.getBoundingClientRect().left;
  const [left, right] = [Math.min, Math.max].map((end) => () => end(...fingers.values())) as [
    () => number,
    () => number,
  ];

  function wheel(event: WheelEvent) {
    const { zoom, hourAt } = asked();
    if (!zoom || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    zoom.by(hourAt(placeOf(event)), 2 ** (event.deltaY / DOUBLED_PX));
  }
  function down(event: PointerEvent) {
    if (!asked().zoom) return;
    if (event.pointerType === 'touch') fingers.set(event.pointerId, placeOf(event));
    else if (event.button === 0) pressed = placeOf(event);
  }
  function move(event: PointerEvent) {
    const { zoom, hourAt, onbrush } = asked();
    const x = placeOf(event);
    if (fingers.has(event.pointerId)) {
      const before = right() - left();
      fingers.set(event.pointerId, x);
      const now = right() - left();
      if (fingers.size === 2 && before > 0 && now > 0)
        zoom?.by(hourAt((left() + right()) / 2), before / now);
    } else if (pressed !== undefined && event.buttons === 1) {
      if (drawn === undefined && Math.abs(x - pressed) < STILL_PX) return;
      if (drawn === undefined) chart.setPointerCapture(event.pointerId);
      drawn = x;
      onbrush([hourAt(pressed), hourAt(x)]);
    }
  }
  function up(event: PointerEvent) {
    const { zoom, hourAt, onbrush } = asked();
    fingers.delete(event.pointerId);
    if (event.type === 'pointerup' && pressed !== undefined && drawn !== undefined)
      zoom?.to(hourAt(pressed), hourAt(drawn));
    if (drawn !== undefined) onbrush(undefined);
    pressed = drawn = undefined;
  }

  const gone = new AbortController();
  const { signal } = gone;
  chart.addEventListener('wheel', wheel, { passive: false, signal });
  chart.addEventListener('pointerdown', down, { signal });
  chart.addEventListener('pointermove', move, { signal });
  for (const ends of ['pointerup', 'pointercancel'] as const)
    chart.addEventListener(ends, up, { signal });
  return () => gone.abort();
};
