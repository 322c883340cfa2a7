import { hoursOf } from '../../shared/log/localTime';
import type { Reading } from '../../shared/log/reading';
import type { LogAnswer } from './outcome';

const DAY_H = 24;
const WEEK_H = 168;
/** So much beyond all that is dosed is no noise of two tests, dKH. */
const MORE_DKH = 1;
/** What is dosed is off by no more than this as a rule: common practice is a fifth. */
const AT_MOST = 1.5;

const changesWater = ({ additive, waterChangePercent }: Reading): boolean =>
  additive !== undefined || waterChangePercent !== undefined;

/** Whether alkalinity rose from one reading to the next by more than all that is dosed brings where corals use nothing. */
export function roseUnexplained(
  { fit, fan, useNow }: Pick<LogAnswer, 'fit' | 'fan' | 'useNow'>,
  readings: readonly Reading[],
): boolean {
  // What the fit took for a leap is told as that.
  if (fit.leaps.length > 0) return false;
  const tests = fit.points.filter(({ kind }) => kind === 'alkalinity');
  const startH = hoursOf(fit.startAt);
  return tests.slice(1).some((test, i) => {
    const before = tests[i]!;
    const between = readings.filter(({ at }) => {
      const timeH = hoursOf(at) - startH;
      return timeH >= before.timeH && timeH <= test.timeH;
    });
    if (between.some(changesWater)) return false;
    const { dkh } = fan.ahead;
    const brings = useNow.dkhPerDay + ((dkh[WEEK_H]! - dkh[0]!) * DAY_H) / WEEK_H;
    const most = (AT_MOST * Math.max(0, brings) * (test.timeH - before.timeH)) / DAY_H;
    // What has come down again since is a quarrel of the tests, or is past.
    const stays = tests.at(-1)!.value - before.value > MORE_DKH;
    return stays && test.value - before.value > most + MORE_DKH;
  });
}
