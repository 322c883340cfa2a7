import type { TimeWindow } from './timeWindow';
import type { Zoom } from './zoomed';

/** How a chart over dates is looked at: which stretch of it, how that is changed, and which hour is read. */
export interface LookedAt {
  readonly window: TimeWindow;
  readonly zoom: Zoom;
  readonly cursorH: number;
  /** Whether that hour was asked for, and is drawn. */
  readonly isRead: boolean;
  read(timeH: number): void;
}
