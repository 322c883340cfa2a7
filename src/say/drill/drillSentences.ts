import type { Scenario } from '../../../shared/scenario/schema';
import { asSentence } from '../../../shared/words/sentence';
import { say } from '../../../shared/words/drillTold';
import { figure, figureText } from '../../../shared/words/figure';
import { passedAnyway } from '../../../shared/verdict/anyway';
import { clockText, spanText } from '../clockText';
import {
  emptyFrom,
  firstFaultH,
  type DrillAnswer,
  type DrillOutcome,
  type OtherEnd,
} from '../../../shared/verdict/drillOutcome';
import { lineOf, passed, type LineResult } from '../../../shared/verdict/lineResult';
import { limitText, lineTexts } from '../lineTexts';
import { stopsAir } from '../../../shared/verdict/oxygenLeft';
import { oxygenGrounds, oxygenLead } from './oxygenSentences';
import { phText } from '../texts';
import { stoppedSentence } from '../verdict/stopped';

const phTold = (ph: number) => figureText(phText(ph));

/** What passed beside pH, in a few words. */
const sideText = ({ quantity, trouble, limit }: LineResult): string =>
  (trouble === 'above' ? say.goesAbove : say.goesBelow)(
    lineTexts[quantity].name,
    figureText(limitText(quantity, limit)),
  );

type Judged = Pick<DrillAnswer, 'undisturbed'> &
  Partial<Pick<DrillAnswer, 'worst'>> & { readonly outcome: Pick<DrillOutcome, 'lines'> };

/** What the failure itself made pass: not what was passed before it, nor what passes without it. */
function passedByFailure({ outcome: { lines }, undisturbed }: Judged): readonly LineResult[] {
  const anyway = passedAnyway(lines, undisturbed);
  return passed(lines).filter((line) => !line.already && !anyway.includes(line));
}

/** The answer in a sentence: the highest pH, how long it is beyond the keeper's limit, the rest. */
function drillHeadline(answer: Judged): string {
  const { lines } = answer.outcome;
  const { worst } = answer;
  const [high, harm] = [lineOf(lines, 'phHigh'), lineOf(lines, 'phHarm')];
  const gone = passedByFailure(answer);
  const peak = phTold(high.worst);
  if (passed(lines).length === 0) return say.allInside(peak);
  if (gone.length === 0) return say.nothingMore(peak);
  const [harmPh, highPh, span] = [figure(harm.limit), figure(high.limit), spanText(high.outsideH)];
  if (high.firstH === undefined) {
    return say.phNotAboveBut(peak, highPh, asSentence(gone.map(sideText).join(', ')));
  }
  const isBack = high.backH !== undefined;
  if (harm.firstH === undefined) {
    // "Stays below" is no comfort beside an hour of the same day at which it does not.
    if (worst && worst.peakPh > harm.limit) {
      return (isBack ? say.phAbove : say.phAboveNotBack)(peak, highPh, span);
    }
    return (isBack ? say.phBelowHarm : say.phBelowHarmNotBack)(peak, harmPh, highPh, span);
  }
  const harmSpan = spanText(harm.outsideH);
  return (isBack ? say.phAboveHarm : say.phAboveHarmNotBack)(peak, harmPh, harmSpan, highPh, span);
}

/** What else passes beside a pH that is the news. */
function besidePh(answer: DrillAnswer): string {
  if (lineOf(answer.outcome.lines, 'phHigh').firstH === undefined) return '';
  const others = passedByFailure(answer).filter(({ quantity }) => quantity !== 'ph');
  return others.length === 0 ? '' : say.also(others.map(sideText).join(', '));
}

/** What the failure is not to blame for: passed before it, or without it too. */
function withoutItToo({ outcome: { lines }, undisturbed }: DrillAnswer): string {
  const anyway = passedAnyway(lines, undisturbed);
  const others = passed(lines).filter((line) => line.already || anyway.includes(line));
  return others.length === 0 ? '' : say.withoutItToo(others.map(sideText).join(', '));
}

function chalkSentence({ lines }: OtherEnd): string {
  const harm = lineOf(lines, 'phHarm');
  const peak = phTold(lineOf(lines, 'phHigh').worst);
  return harm.firstH === undefined
    ? say.chalk.below(peak, figure(harm.limit))
    : say.chalk.above(peak, figure(harm.limit), spanText(harm.outsideH));
}

/** What nobody noticing would add; nothing where it changes nothing. */
function leftAloneSentence({ outcome, leftAlone }: DrillAnswer, scenario: Scenario): string {
  if (!leftAlone) return '';
  const [now, then] = [lineOf(outcome.lines, 'phHigh'), lineOf(leftAlone.lines, 'phHigh')];
  const clock = (timeH: number) => clockText(timeH, scenario.start.clockHour);
  const wasEmpty = emptyFrom(outcome, firstFaultH(scenario)) !== undefined;
  if (leftAlone.emptyH !== undefined && !wasEmpty) {
    return say.leftAlone.empty(clock(leftAlone.emptyH), phTold(then.worst));
  }
  return then.worst > now.worst + 0.02
    ? say.leftAlone.peak(phTold(then.worst), clock(then.worstH))
    : '';
}

/** Warm water holds less oxygen; what matters then and is not in the model is said beside it. */
const inWarmWater = (answer: DrillAnswer, scenario: Scenario): string =>
  scenario.faults.some(({ kind, endTempC }) => kind === 'heater' && endTempC > scenario.tank.tempC)
    ? [
        say.oxygen.warmth(figure(scenario.oxygen.respirationPerTenDegrees)),
        oxygenLead(answer, scenario),
        oxygenGrounds(answer, scenario),
      ].join(' ')
    : '';

/**
 * The whole answer of a drill, what harms first and the worse before the better: oxygen where the
 * air is stopped, then pH; why one failure has several peaks is said where they stand.
 */
export function drillSentences(answer: DrillAnswer, scenario: Scenario): readonly string[] {
  const { outcome, worst, chalk } = answer;
  const { clockHour } = scenario.start;
  const { stopped } = outcome;
  const firstH = firstFaultH(scenario);
  if (stopped && stopped.timeH <= firstH) return [say.stopsBefore, stoppedSentence(stopped)];
  const set = drillHeadline(answer);
  // Where pH stays inside at its worst hour too, that hour is no news.
  const isNews = worst !== undefined && worst.peakPh > lineOf(outcome.lines, 'phHigh').limit;
  const headline = isNews
    ? say.worstHour(
        phTold(worst.peakPh),
        clockText(worst.clockHour, 0),
        clockText((firstH + clockHour) % 24, 0),
        set,
      )
    : set;
  return [
    stopsAir(scenario) ? oxygenLead(answer, scenario) : '',
    headline,
    stopsAir(scenario) ? oxygenGrounds(answer, scenario) : inWarmWater(answer, scenario),
    besidePh(answer),
    withoutItToo(answer),
    leftAloneSentence(answer, scenario),
    chalk ? chalkSentence(chalk) : '',
  ].filter((text) => text !== '');
}
