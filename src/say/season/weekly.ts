import { wordFor } from '../../../shared/scenario/words';
import { beyondText } from '../drill/boughtText';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/season';
import {
  type Season,
  name,
  begins,
  value,
  grams,
  litres,
  roughly,
  listed,
  sharesText,
} from './texts';

/** A test tells so much. */
const TOLD_DKH = 0.25;

export function weeklyText({ weekly }: Pick<Season, 'weekly'>, mixedNow: number): string {
  const { kind, exchange } = weekly;
  if (kind === 'cannot') return say.thenCannot;
  if (!exchange) return say.thenNone;
  const { litresPerWeek, salinityPractical } = exchange;
  return salinityPractical === mixedNow && kind === 'asIs'
    ? say.thenSame(litres(litresPerWeek))
    : say.thenMixed(litres(litresPerWeek), figure(salinityPractical));
}

function partsText(parts: number): string {
  if (parts === 1) return say.parts.once;
  return parts === 7 ? say.parts.daily : say.parts.in(String(parts));
}

const METALS = ['calcium', 'magnesium'] as const;

export function weeklyTexts({ weekly }: Pick<Season, 'weekly'>, mixedNow: number): string[] {
  const { exchange, poured, leftIn, notHeld, alkalinityByDkh } = weekly;
  return [
    ...waterTexts(exchange, mixedNow),
    ...METALS.flatMap((id) => {
      const [one, share] = [poured[id], leftIn[id]];
      return [
        ...(one
          ? [
              say.weekly(
                ...([grams(one.gramsPerWeek), wordFor(one.additive)] as const),
                partsText(one.parts),
              ),
            ]
          : []),
        ...(share === undefined ? [] : [say.leftIn(name(id), figure(100 * share, 0))]),
      ];
    }),
    ...(Math.abs(alkalinityByDkh) < TOLD_DKH
      ? []
      : [
          (alkalinityByDkh < 0 ? say.alkalinityLower : say.alkalinityHigher)(
            figure(Math.abs(alkalinityByDkh), 1),
          ),
        ]),
    ...notHeld.map(({ id, day: on, side }) =>
      (side === 'above' ? say.notHeldAbove : say.notHeldBelow)(begins(name(id)), String(on)),
    ),
  ];
}

function waterTexts(exchange: Season['weekly']['exchange'], mixedNow: number): string[] {
  if (!exchange || exchange.salinityPractical === mixedNow) return [];
  const { litresPerWeek, plainLPerWeek, salinityPractical } = exchange;
  return plainLPerWeek > 0
    ? [say.plainOf(roughly(plainLPerWeek), litres(litresPerWeek), figure(mixedNow))]
    : [say.strongerBy(figure(salinityPractical), figure(mixedNow))];
}

export function promiseTexts({
  kind,
  notHeld,
  judged,
  promisedDays,
  passed,
}: Season['weekly']): string[] {
  if (kind === 'cannot') return [];
  const ids = judged.filter((id) => notHeld.every((leaves) => leaves.id !== id));
  if (ids.length === 0) return [];
  const inside = promisedDays > 0 ? [say.promised(promisedDays, listed(ids.map(name)))] : [];
  return passed?.line && passed.firstH < (promisedDays + 1) * 24
    ? [...inside, say.promisedBut(beyondText(passed.line), String(promisedDays + 1))]
    : inside;
}

export function driftText(drift: Season['drifts'][number]): string {
  const { id, now, after, giveOrTake, shares, leavesDay } = drift;
  const told = say.drift(
    ...([name(id), value(id, now), value(id, after[0]), value(id, after[1])] as const),
    value(id, giveOrTake),
  );
  const leaves = leavesDay === undefined ? told : say.driftLeaves(told, String(leavesDay));
  const by = sharesText(id, shares);
  return by === '' ? `${leaves}.` : say.driftShares(leaves, by);
}
