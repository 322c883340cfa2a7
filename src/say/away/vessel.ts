import type { Scenario } from '../../../shared/scenario/schema';
import { figure } from '../../../shared/words/figure';
import { say } from '../../../shared/words/away';
import type { AwayTold } from '../../ask/outcome';
import { filled, litres, downDays, type Vessel, vesselName, daysOf } from './texts';

/** Litres that may be used at most. */
export const neededText = ({ needL }: Vessel): string =>
  needL === undefined ? say.panel.tooMuch : litres(needL);

/** The lines that all of it at once may not pass: "9", "11". */
const harmTexts = ({ limits }: Scenario): [string, string] => [
  figure(limits.phHarmNbs),
  figure(limits.alkalinityHighDkh),
];

/** The most that may stand in a vessel, and why not more. */
export function mostText(
  { harmless, harms, leaveL, pump }: Vessel,
  { kind, scenario }: AwayTold['away']['provided'],
): string {
  const { panel } = say;
  if (!harmless) return panel.anyOfIt;
  const most = litres(harmless.litres);
  const isOther = pump === undefined && (kind === 'thinner' || kind === 'plain');
  if (harmless.why === 'rim') return panel.mostRim(most);
  if (isOther) return panel.mostOther(litres(leaveL), most);
  const told = panel.mostHarm(most, ...harmTexts(scenario));
  return harms ? panel.doesHarm(told) : told;
}

/** A vessel in which may not stand all that may be needed. */
export function tooFullText(vessel: Vessel, now: Scenario): string[] {
  const { harmless, mostUsedL, dailyMostL, name } = vessel;
  if (!harmless || dailyMostL === 0 || harmless.litres >= (mostUsedL ?? Infinity)) return [];
  const [most, lasts] = [filled(harmless.litres), daysOf(harmless.litres, vessel)];
  if (harmless.why === 'rim') return [say.rim(most, lasts)];
  const lines = harmTexts(now);
  return [
    name === undefined
      ? say.tooFull(most, lasts, ...lines)
      : say.bottleTooFull(name, most, lasts, ...lines),
  ];
}

/** What is left although all of it at once does harm. */
export const harmsText = ({ name, leaveL, harmless }: Vessel): string =>
  name === undefined
    ? say.harmsReservoir(filled(leaveL), filled(harmless!.litres))
    : say.harmsBottle(filled(leaveL), name, filled(harmless!.litres));

/** How long what a vessel holds now lasts. */
function lastsText({ lastsDays, surelyDays }: Vessel): string {
  const { throughout, lastsDays: told, lastsBut } = say.panel;
  if (surelyDays === undefined) return throughout;
  const surely = downDays(surelyDays);
  return lastsDays === undefined ? lastsBut(surely) : told(downDays(lastsDays), surely);
}

/** A vessel that may stand empty before the keeper is back. */
export const runsOutText = (vessel: Vessel): string[] =>
  vessel.surelyDays === undefined || vessel.hasL === 0
    ? []
    : [say.lasts(vesselName(vessel), lastsText(vessel))];
