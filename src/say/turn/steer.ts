import { newestOf } from '../../../shared/log/newest';
import { limitBands } from '../../../shared/scenario/limitBands';
import { toDecimals } from '../../../shared/units/digits';
import { figure } from '../../../shared/words/figure';
import { say as season } from '../../../shared/words/season';
import { say } from '../../../shared/words/turn';
import type { SteerTold, TurnTold } from '../../ask/outcome';
import { firstText, loweringTexts, takenBackTexts } from '../season/first';
import { KIT, pouredTexts, unreadTexts } from '../season/moved';
import { begins, decimals, name, value } from '../season/texts';
import { weeklyText, weeklyTexts } from '../season/weekly';
import { waitsFor, type Around } from './known';
import { readAs } from './unread';
import { limits, passed } from './texts';

const { steer: told } = say;

type Steered = NonNullable<SteerTold['steered']>;
type Together = NonNullable<Steered['together']>;

/** A test tells so much, dKH. */
const TOLD_DKH = 0.25;

const wantingText = ({ id, level, side, limit, leavesDay }: Steered['wanting'][number]): string => {
  const [what, end] = [begins(name(id)), value(id, limit)] as const;
  if (leavesDay > 0) return told[side === 'above' ? 'rises' : 'falls'](what, end, leavesDay);
  return told[side](what, value(id, level), end);
};

function endsText(by: number, isTurned: boolean): string {
  const ends = by < 0 ? told.lower : told.higher;
  return ends(figure(Math.abs(by), 1), isTurned ? told.thanTurn : told.thanNow);
}

/** What does not get back inside by it, though it is nearer. */
function stillOutsideTexts(ends: NonNullable<Together['ends']>, plan: Together['scenario']) {
  return limitBands(plan.limits).flatMap(({ id, low, high }) => {
    if (id !== 'calcium' && id !== 'magnesium' && id !== 'salinity') return [];
    const stands = toDecimals(ends[id], decimals(id));
    if (stands >= low && stands <= high) return [];
    return [told.stillOutside(begins(name(id)), value(id, stands < low ? low : high))];
  });
}

/** How it goes with the turn, as the one run has it. */
function togetherTexts({ days, ends, scenario, ...run }: Together, isTurned: boolean): string[] {
  const { largestDailyDkh, alkalinityByDkh: by, alkalinityPasses, leavesSooner } = run;
  const most = limits(largestDailyDkh);
  return [
    (isTurned ? told.asOne : told.alone)(days, most),
    ...(ends
      ? [
          told.ends(figure(ends.calcium, 0), figure(ends.magnesium, 0), figure(ends.salinity, 1)),
          ...stillOutsideTexts(ends, scenario),
        ]
      : []),
    ...leavesSooner.map(({ id, side, limit, day }) =>
      told.sooner[side](begins(name(id)), value(id, limit), day),
    ),
    ...(alkalinityPasses?.line
      ? [told.passes(...passed(alkalinityPasses.line, alkalinityPasses.firstH))]
      : []),
    ...(Math.abs(by) >= TOLD_DKH ? [endsText(by, isTurned)] : []),
  ];
}

function loweringsText({ seasonHasWays, ...lowering }: Steered['lowerings'][number]): string[] {
  const [title, ...ways] = loweringTexts(lowering);
  return seasonHasWays && lowering.ways.length === 0
    ? [title!, told.noWayBeside]
    : [title!, ...ways];
}

/** What nobody has read, or not for long, of what is poured. */
function unreadOf({ first }: Steered, readings: SteerTold['readings'], now: string): string[] {
  const ids = (['calcium', 'magnesium', 'salinity'] as const).filter((id) =>
    id === 'salinity'
      ? first.kind === 'first' && first.change
      : first.kind === 'first' && first.poured[id],
  );
  return unreadTexts(
    ids.map((id) => ({ id, latest: newestOf(readings, readAs[id]) })),
    now,
  );
}

const pours = ({ first, weekly, together }: Steered): boolean =>
  (first.kind === 'first' && Object.keys(first.poured).length > 0) ||
  (together?.holds === true && Object.keys(weekly.poured).length > 0);

/** What calcium, magnesium and salinity want beside a turn; empty where they want nothing. */
export function steerSentences(
  { steered, readings }: SteerTold,
  { question, turn, untilKnown }: TurnTold,
  around: Around,
): string[] {
  if (!steered) return [];
  const { wanting, first, weekly, lowerings, together } = steered;
  const wants = wanting.map(wantingText).join(' ');
  const waits = waitsFor(around);
  // Nothing is poured by a turn that itself waits for a test: what was poured since would go in twice.
  if (waits !== undefined && waits !== 'use') return [`${wants} ${told.testFirst}`];
  const isTurned =
    turn.kind === 'turn' || untilKnown?.kind === 'raise' || untilKnown?.kind === 'wait';
  const mixedNow = question.now.waterChanges.salinityPractical;
  const holds = together?.holds ?? false;
  return [
    [
      wants,
      ...unreadOf(steered, readings, around.now),
      ...(first.kind === 'none' ? [] : [firstText(first)]),
    ].join(' '),
    ...(holds ? [weeklyText({ weekly }, mixedNow), ...weeklyTexts({ weekly }, mixedNow)] : []),
    ...(together ? togetherTexts(together, isTurned) : []),
    ...takenBackTexts(first),
    ...(pours(steered) ? [told.careful, season.kitDoubt(KIT.calcium, KIT.magnesium)] : []),
    ...lowerings.flatMap(loweringsText),
    ...pouredTexts(steered.poured),
  ];
}

/** What of it goes into the log's note when the turn is run by. */
export const steerNote = ({ steered }: SteerTold): string =>
  steered?.first.kind === 'first' ? ` ${firstText(steered.first)}` : '';

/** What is tried on the bench: all of it as one plan. */
export const steeredPlan = ({ steered }: SteerTold) => steered?.together?.scenario;
