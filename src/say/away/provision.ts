import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold } from '../../ask/outcome';
import { filled, type Vessel, daysOf } from './texts';
import { harmsText } from './vessel';

/** What is to be left in the reservoir. */
function reservoirText({ question, away }: AwayTold): string {
  const told = say.provision;
  const { kind, scenario } = away.provided;
  const { reservoirL, gramsPerL, additive } = scenario.topOff;
  const before = question.now.topOff;
  if (reservoirL === 0) return before.reservoirL === 0 ? told.noReservoir : told.empty;
  if (kind === 'thinner') {
    return told.reservoirThinner(filled(reservoirL), figure(gramsPerL), figure(before.gramsPerL));
  }
  if (before.reservoirL === 0) return told.reservoirNew(filled(reservoirL));
  return additive === 'none' || gramsPerL === 0
    ? told.reservoirPlain(filled(reservoirL))
    : told.reservoirSame(filled(reservoirL), figure(gramsPerL));
}

/** What is to be left in reservoir and bottles, and what whoever comes fills up again. */
export function provisionText(asked: AwayTold): string {
  const told = say.provision;
  const { vessels, topUps, comesDays, provided } = asked.away;
  const bottles = vessels.flatMap(({ name, leaveL }) =>
    name === undefined ? [] : [told.bottle(filled(leaveL), name)],
  );
  const fillsUp = topUps.map((one) =>
    one.pump !== undefined
      ? told.withStock(provided.scenario.dosers[one.pump]!.name)
      : one.with === 'mix'
        ? told.withMix
        : told.withPlain,
  );
  return [
    told.leave([reservoirText(asked), ...bottles].join(', ')),
    ...(fillsUp.length > 0 ? [told.visits(comesDays, fillsUp.join(', '))] : []),
  ].join('; ');
}

/** What does harm all at once and is left all the same; empty where nothing does. */
export function harmsSentence({ vessels }: AwayTold['away']): string {
  const harms = vessels.filter((vessel) => vessel.harms).map(harmsText);
  return harms.length > 0 ? say.harms(harms.join(', ')) : '';
}

/** What whoever comes fills in, how much at most, and what may be used up before the keeper is back. */
export function topUpTexts({ topUps, provided, vessels }: AwayTold['away']): string[] {
  const told = say.sheet.topUps;
  const fills = topUps.map(({ pump, with: what, mostL }) => {
    const mark = filled(vessels.find((vessel) => vessel.pump === pump)!.leaveL);
    return pump === undefined
      ? told[what](mark, filled(mostL))
      : told.bottle(provided.scenario.dosers[pump]!.name, mark, filled(mostL));
  });
  const isFilledUp = (vessel: Vessel) => topUps.some(({ pump }) => pump === vessel.pump);
  const lasts = vessels.flatMap((vessel) => {
    const { name, leaveL, mostUsedL, dailyMostL } = vessel;
    if (isFilledUp(vessel) || dailyMostL === 0 || leaveL >= (mostUsedL ?? Infinity)) return [];
    const days = daysOf(leaveL, vessel);
    return [name === undefined ? told.lasts(days) : told.bottleLasts(name, days)];
  });
  const [reservoir] = vessels as [Vessel];
  const byHand =
    !isFilledUp(reservoir) && reservoir.dailyL > 0 ? [told.byHand(filled(reservoir.dailyL))] : [];
  const stays = [...fills, ...lasts];
  return [...(stays.length > 0 ? stays : [told.nothing]), ...byHand];
}
