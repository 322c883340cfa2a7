import { hoursOf } from '../../../shared/log/localTime';
import type { Reading } from '../../../shared/log/reading';
import type { FanPicture } from '../../charts/fanShape';

/** Tests from before the fit begins, whose noise it does not know. */
export const earlierPoints = (
  readings: readonly Reading[],
  startAt: string,
): FanPicture['points'] =>
  readings.flatMap(({ at, alkalinityDkh: value }) =>
    value === undefined || at >= startAt
      ? []
      : [{ timeH: hoursOf(at) - hoursOf(startAt), value, sigma: 0, outlier: false }],
  );
