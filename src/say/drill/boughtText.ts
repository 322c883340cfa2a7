import { actIds } from '../../../shared/faults/firstHour';
import type { HandAir } from '../../../shared/faults/handAir';
import { say } from '../../../shared/words/actsBuy';
import { figure, figureText } from '../../../shared/words/figure';
import type { ActBought, Bought, FirstHourBought, Reach } from '../../../shared/verdict/bought';
import { spanText } from '../clockText';
import type { Line } from '../../../shared/verdict/lines';
import { limitText, lineTexts, lineValue } from '../lineTexts';

/** Less is nothing gained, h. */
const LEAST_H = 1 / 60;

/** "oxygen below 4 mg/L". */
export const beyondText = ({ quantity, trouble, limit }: Line): string =>
  say[trouble](lineTexts[quantity].name, figureText(limitText(quantity, limit)));

/** "after 1.2 h to 3 h", "after 1.5 h at the soonest, or not at all"; nothing where it is kept. */
export function reachText({ soonestH, latestH }: Reach): string {
  if (soonestH === undefined) return '';
  const from = spanText(soonestH);
  if (latestH === undefined) return say.orNever(from);
  const to = spanText(latestH);
  return from === to ? say.after(from) : say.between(from, to);
}

/** What is passed first if nothing is done, and how long there is. */
export const firstText = ({
  first,
  followedH,
}: Pick<FirstHourBought, 'first' | 'followedH'>): string =>
  first
    ? say.first([first, ...(first.graver ? [first.graver] : [])].map(passedText).join('; '))
    : say.nothingPassed(spanText(followedH));

const passedText = ({ line, reach }: { line: Line; reach: Reach }): string =>
  `${beyondText(line)} ${reachText(reach)}`;

/** "20 min to 1.2 h", "up to 3.3 h", "2 h or more". */
function gainedText([least, most]: Bought<string>['gainedH']): string {
  const from = spanText(least);
  if (most === Infinity) return say.gained.orMore(from);
  const to = spanText(most);
  if (least < LEAST_H) return say.gained.upTo(to);
  return from === to ? from : say.gained.between(from, to);
}

/** The few words that name an act which the first hour itself has none for. */
export function actName(
  { act, portions }: Pick<ActBought, 'act' | 'portions'>,
  handAir: HandAir,
): string {
  const { names } = say;
  if (act === 'batteryAir') return names.batteryAir(figure(handAir.airLPerMin));
  if (act === 'scoop') return names.scoop(figure(handAir.scoopLPerMin));
  if (act === 'putRight') return names.putRight;
  if (act !== 'carbonatedWater' || !portions) return '';
  return names.carbonatedWater(String(portions.count), figure(portions.litresEach, 2));
}

type Drilled = Pick<FirstHourBought, 'followedH'> & Partial<Pick<FirstHourBought, 'actsFromH'>>;

/** These end what runs in: too late for what has, in time for what has not. */
const STOPS: readonly string[] = ['unplugTopOff', 'liftHose', 'unplugDoser'];

function nothingText(bought: Bought<string>, { actsFromH }: Drilled): string {
  const beyond = beyondText(bought.line);
  return actsFromH !== undefined && STOPS.includes(bought.act)
    ? say.stops(beyond, spanText(actsFromH))
    : say.nothing(beyond) + practiceText(bought);
}

/** What common practice asks for is not talked down by what it does to one line. */
function practiceText({ act, line }: Bought<string>): string {
  if (!actIds.some((id) => id === act)) return '';
  return act === 'aerate' && line.quantity === 'temperature' ? say.practiceAir : say.practice;
}

function loweredText(bought: Bought<string>, drilled: Drilled): string {
  const { line, worst, farthest } = bought;
  const [without, withIt] = [0, 1].map((i) => {
    const [most, asSet] = [farthest[i]!, worst[i]!].map((value) =>
      figureText(lineValue(line.quantity, value)),
    ) as [string, string];
    return most === asSet ? most : say.asSetToo(most, asSet);
  }) as [string, string];
  return without === withIt
    ? nothingText(bought, drilled)
    : say.lower(lineTexts[line.quantity].name, without, withIt);
}

function gainText(bought: Bought<string>, drilled: Drilled): string {
  const { gain, line, before, after, gainedH, gainsAsSet, outsideH } = bought;
  const beyond = beyondText(line);
  if (gain === 'nothing') return nothingText(bought, drilled);
  if (gain === 'lower') return loweredText(bought, drilled);
  if (gain === 'shorter') {
    const [without, withIt] = outsideH.map(spanText) as [string, string];
    return without === withIt
      ? nothingText(bought, drilled)
      : (gainsAsSet ? say.shorter : say.shorterElsewhere)(beyond, withIt, without);
  }
  if (after.soonestH === undefined) {
    return say.kept(beyond, spanText(drilled.followedH), reachText(before));
  }
  const [without, withIt] = [reachText(before), reachText(after)];
  return without === withIt
    ? say.little(beyond, withIt) + practiceText(bought)
    : say.laterBy(beyond, withIt, without, gainedText(gainedH));
}

/** What an act buys, in a line that stands beside it. */
export function boughtText(bought: Bought<string>, drilled: Drilled): string {
  return gainText(bought, drilled) + costsText(bought);
}

function costsText({ costs }: Bought<string>): string {
  if (!costs) return '';
  const [beyond, withIt] = [beyondText(costs.line), spanText(costs.withItH)];
  if (costs.withoutH === undefined) return say.costsNew(beyond, withIt);
  const without = spanText(costs.withoutH);
  return without === withIt ? say.costsLittle(beyond) : say.costs(beyond, withIt, without);
}
