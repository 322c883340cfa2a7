import { wordFor } from '../../../shared/scenario/words';
import { beyondText } from '../drill/boughtText';
import { lineValue } from '../lineTexts';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/season';
import {
  type Season,
  type First,
  type Poured,
  name,
  begins,
  value,
  grams,
  litres,
  listed,
} from './texts';
import { KIT } from './moved';

const pouredText = (poured: Poured): string =>
  listed(
    Object.values(poured).map(({ additive, gramsPerDay }) =>
      say.grams(grams(gramsPerDay), wordFor(additive)),
    ),
  );

export function firstText(first: First): string {
  if (first.kind === 'none') return say.noAdd;
  if (first.kind === 'outOfReach') return say.outOfReach;
  if (first.kind === 'alkalinityFirst') {
    return say.alkalinityFirst(figure(first.harmDkh), String(first.day));
  }
  if (first.kind === 'refused') return refusedText(first);
  const { poured, days, change } = first;
  const what = pouredText(poured);
  if (!change) return what === '' ? say.noAdd : say.pour(what, days);
  const water = [litres(change.litres), figure(change.salinityPractical)] as const;
  return what === '' ? say.changeFirst(days, ...water) : say.pourWith(what, days, ...water);
}

const refusedText = ({ passed }: Extract<First, { kind: 'refused' }>): string =>
  say.refused(passedText(passed));

const passedText = ({ line, fast }: Extract<First, { kind: 'refused' }>['passed']): string =>
  line
    ? `${beyondText(line)} (${figureText(lineValue(line.quantity, line.worst))})`
    : say.fast(begins(name(fast!.id)), value(fast!.id, fast!.by));

export function endsTexts({ first }: Season): string[] {
  if (first.kind !== 'first') return [];
  const { calcium, magnesium, salinity } = first.ends;
  return [
    say.endsAt(figure(calcium, 0), figure(magnesium, 0), figure(salinity, 1)),
    ...takenBackTexts(first),
    ...(pouredText(first.poured) === '' ? [] : [say.kitDoubt(KIT.calcium, KIT.magnesium)]),
  ];
}

/** What the next change of water takes back at once. */
export const takenBackTexts = (first: First): string[] =>
  first.kind === 'first'
    ? first.takenBack.map(({ id, byMgPerL }) => say.takenBack(name(id), value(id, byMgPerL)))
    : [];

export function loweringTexts({
  id,
  above,
  limit,
  ways,
  newWaterHolds,
}: Season['lowerings'][number]) {
  const told = say.ways;
  const text = (way: (typeof ways)[number]): string =>
    way.kind === 'change'
      ? told.change(litres(way.litres), figure(way.percent), way.days)
      : told[way.kind](way.days);
  return [
    say.high(begins(name(id)), value(id, above), value(id, limit)),
    ...(ways.length > 0 ? ways.map(text) : [say.noWay(figure(newWaterHolds, 0))]),
  ];
}

export function insteadTexts({ instead }: Season): string[] {
  if (instead?.kind !== 'first') return [];
  const what = pouredText(instead.poured);
  return what === '' ? [] : [say.instead(what, instead.days)];
}
