import type { Scenario } from '../../../shared/scenario/schema';
import { figure, figureText } from '../../../shared/words/figure';
import { say } from '../../../shared/words/plans';
import type { Turned } from '../../ask/outcome';
import { phText } from '../texts';

/** What a stuck top-off does, which line it passes, and how much may stand in the reservoir (L). */
export function dumpSentences(
  { peakPh, peakDkh, clockHour }: NonNullable<Turned['worstDump']>,
  { phHighNbs, phHarmNbs }: Scenario['limits'],
  fullestL?: number,
): string[] {
  const told = say.offer;
  const passes = [
    ...(peakPh > phHarmNbs ? [told.dumpHarms(figure(phHarmNbs))] : []),
    ...(peakPh > phHighNbs && peakPh <= phHarmNbs ? [told.dumpAbove(figure(phHighNbs))] : []),
  ];
  return [
    told.ifStuck(clockHour, figureText(phText(peakPh)), figure(peakDkh, 1)),
    ...passes,
    ...(fullestL === undefined ? [] : [told.noMoreThan(figure(fullestL))]),
  ];
}
