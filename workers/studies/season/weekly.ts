import type { MostPerDay } from '../../../shared/recipe/mostPerDay';
import type { SeasonTargets } from '../../../shared/recipe/seasonTargets';
import type { First } from './firstDays';
import type { SeasonTank } from './seasonTank';
import { weeklyDoses } from './weeklyDoses';
import { weeklyTold, type Weekly } from './weeklyTold';
import { perWeekOf, Weeks, type Changes } from './weeks';

/** Weekly changes of so many percent are tried where those of the plan do not do. */
const PERCENTS = [5, 10, 20, 30];
/** Shorter than this nothing is held. */
const LEAST_PROMISE_DAYS = 7;
/** Each costs a keeper a second. */
const MOST_TOLD = 3;
/** So long is as good as the season: it is tested before. */
const GOOD_PROMISE_DAYS = 28;

/** What keeps salinity, calcium and magnesium inside their bands once the first days are done. */
export function weeklyHold(
  tank: SeasonTank,
  first: First,
  targets: SeasonTargets,
  mostPerDay: MostPerDay,
): Weekly {
  const weeks = new Weeks(tank, first, targets, mostPerDay);
  const { plain, volumeL } = weeks;
  const own = tank.now.waterChanges;
  const goesOut = weeks.outOf(tank.replay(weeks.stretches(own, plain)));
  if (goesOut.length === 0) return weeklyTold(weeks, 'asIs', own, plain, []);
  // What would hold it once alkalinity is held, nobody can tell before.
  if (first.kind === 'alkalinityFirst') return weeklyTold(weeks, 'cannot', own, plain, goesOut);
  const weekly = PERCENTS.filter((percent) => percent / 100 > perWeekOf(own, volumeL)).map(
    (percent): Changes => ({ ...own, percent, everyDays: 7, continuousLPerDay: 0 }),
  );
  let best: Weekly | undefined;
  let tries = 0;
  for (let todo: Changes[] = [own, ...weekly]; todo.length > 0 && tries < MOST_TOLD;) {
    const [changes, ...others] = todo as [Changes, ...Changes[]];
    todo = others;
    const found = tried(weeks, changes);
    if (!found) continue;
    tries++;
    if (found.promisedDays >= GOOD_PROMISE_DAYS) return found;
    if (found.promisedDays > (best?.promisedDays ?? -1)) best = found;
    // What the use is not known well enough for, no other water holds.
    if (!found.passed || found.passed.firstH > (found.promisedDays + 1) * 24) break;
    // Half as much twice as often moves a day half as far.
    const { percent, everyDays } = changes;
    if (everyDays === 7) todo = [{ ...changes, percent: percent / 2, everyDays: 3.5 }, ...others];
  }
  const asGood = weeklyTold(weeks, 'cannot', own, plain, goesOut);
  if (!best || best.promisedDays < Math.min(LEAST_PROMISE_DAYS, asGood.promisedDays)) {
    return { ...asGood, passed: best?.passed };
  }
  return best;
}

/** Such changes with the doses that go with them; undefined where salinity is not held. */
function tried(weeks: Weeks, changes: Changes): Weekly | undefined {
  const doses = weeklyDoses(weeks, changes);
  if (!doses) return undefined;
  const out = weeks.outOf(weeks.tank.replay(weeks.stretches(changes, doses)));
  if (out.some(({ id }) => id === 'salinity')) return undefined;
  return weeklyTold(weeks, doses === weeks.plain ? 'asIs' : 'turned', changes, doses, out);
}
