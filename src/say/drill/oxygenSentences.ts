import { breathedMmolPerLPerDay } from '../../../shared/processes/unseenRespiration';
import type { Scenario } from '../../../shared/scenario/schema';
import { say as told } from '../../../shared/words/drillTold';
import { figure } from '../../../shared/words/figure';
import { clockText, spanText } from '../clockText';
import type { DrillAnswer } from '../../../shared/verdict/drillOutcome';
import { lineOf } from '../../../shared/verdict/lineResult';
import { oxygenLeft, type OxygenLeft } from '../../../shared/verdict/oxygenLeft';

const say = told.oxygen;

const O2_MG_PER_MMOL = 31.998;

/** "1.2 h to 1.6 h", or one span when both are told alike. */
export function leftText({ soonestH, afterH }: OxygenLeft): string {
  const [from, to] = [soonestH, afterH].map((hours) =>
    hours === undefined ? '' : spanText(hours),
  ) as [string, string];
  if (to === '') return say.onlyClosed(from);
  return from === '' || from === to ? to : say.between(from, to);
}

const isTyped = ({ oxygen }: Scenario) => oxygen.respirationMmolPerLPerDay > 0;

/** What is breathed, and how far it is known. */
function breathedSentence(scenario: Scenario): string {
  const mgPerLPerH = (breathedMmolPerLPerDay(scenario) * O2_MG_PER_MMOL) / 24;
  return say.breathed(figure(mgPerLPerH, 2), isTyped(scenario) ? say.typed : say.assumed);
}

const together = (texts: readonly string[]) => texts.filter((text) => text !== '').join(' ');

/** How long oxygen lasts in a failure that has a part in it: what leads the answer. */
export function oxygenLead(answer: DrillAnswer, scenario: Scenario): string {
  const low = lineOf(answer.outcome.lines, 'oxygenLow');
  const passed = oxygenLeft(answer, scenario).filter(
    ({ soonestH, afterH }) => (soonestH ?? afterH) !== undefined,
  );
  const { soonest } = answer;
  const lines = passed.map((left) => say.below(figure(left.limitMgPerL), leftText(left)));
  return together([
    low.already ? say.already(figure(low.limit)) : '',
    lines.length > 0 ? say.first(lines.join(say.and)) : '',
    lines.length === 0 && !low.already ? say.kept(figure(low.limit), figure(low.worst, 1)) : '',
    soonest
      ? (answer.closed ? say.soonerAsSet : say.sooner)(
          ...([clockText(soonest.clockHour, 0), spanText(soonest.afterH)] as const),
        )
      : '',
    isTyped(scenario) ? '' : say.unmeasured,
  ]);
}

/** What those times rest on. */
export const oxygenGrounds = (answer: DrillAnswer, scenario: Scenario): string =>
  together([breathedSentence(scenario), answer.closed ? say.twoTimes : '', say.before]);
