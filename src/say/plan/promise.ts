import { lineTexts } from '../lineTexts';
import { dayOf } from '../../../shared/verdict/measures';
import { NEAR_TARGET_DKH } from '../../../shared/verdict/nearTarget';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';
import type { Nearest, Offer } from '../../ask/outcome';
import { testBySentences } from './testBy';
import { wayTitle } from './ways';

const { offer: told } = say;

/** What a plan promises, or why it is not offered and what would do instead. */
export function promiseOf({
  id,
  scenario,
  promisedDays,
  refusal,
  nearest,
  onTargetOdds,
  verdict,
}: Pick<
  Offer,
  'id' | 'scenario' | 'promisedDays' | 'refusal' | 'nearest' | 'onTargetOdds' | 'verdict'
>): string {
  const { limits, tank } = scenario;
  if (!refusal) {
    const band = [figure(limits.alkalinityLowDkh), figure(limits.alkalinityHighDkh)] as const;
    const out = outAnyway(verdict, promisedDays);
    const promised =
      out.length === 0
        ? told.promised(...band, promisedDays)
        : told.promisedBut(...band, promisedDays, out.join(', '));
    const tested = testBySentences(promisedDays);
    const odds =
      onTargetOdds === undefined
        ? ''
        : told.onTarget(
            figure(tank.alkalinityDkh),
            figure(NEAR_TARGET_DKH),
            inHundred(onTargetOdds),
          );
    return [promised, ...tested, odds].join(' ').trim();
  }
  const general = id === 'waterChanges' ? told.wayOutChanges : told.wayOut;
  const wayOut = nearest ? nearestWords(nearest) : general;
  switch (refusal.kind) {
    case 'dump':
      return `${told.dump} ${nearest ? wayOut : told.wayOutDump}`;
    case 'offTarget':
      return `${told.offTarget(figure(refusal.endsDkh, 1), figure(tank.alkalinityDkh))} ${wayOut}`;
    case 'breach': {
      const { quantity, worst, limit, firstH } = refusal.breach;
      const { name, unit, format } = lineTexts[quantity];
      const value = `${figureText(format(worst))} ${unit}`.trim();
      const breaks = told.breaks(name, value, figure(limit), String(dayOf(firstH!)));
      const keeps = promisedDays > 0 ? [told.keepsFor(promisedDays)] : [];
      return [breaks, ...keeps, wayOut].join(' ');
    }
  }
}

/** What is outside meanwhile, as the tank runs today too: else it would be refused. */
const outAnyway = ({ broken }: Offer['verdict'], promisedDays: number): string[] => {
  const own = broken.filter(({ firstH }) => firstH! < 24 * promisedDays);
  return [...new Set(own.map(({ quantity }) => lineTexts[quantity].name))];
};

/** No finer than draws and readings tell. */
const inHundred = (odds: number): number => Math.min(95, Math.max(5, Math.round(odds * 20) * 5));

/** The one change that would make it a plan. */
function nearestWords(nearest: Nearest): string {
  const say = told.nearest;
  switch (nearest.kind) {
    case 'knownUse':
      return say.knownUse(figure(nearest.giveOrTakeDkhPerDay));
    case 'target':
      return say.target(figure(nearest.dkh), figure(nearest.giveOrTakeDkhPerDay));
    case 'roomCo2':
      return say.roomCo2(figure(nearest.ppm));
    case 'otherWay':
      return say.otherWay(wayTitle(nearest.way));
  }
}
