import { limitBands } from '../../../shared/scenario/limitBands';
import type { Scenario } from '../../../shared/scenario/schema';
import type { DisplayUnits } from '../../../shared/units/display';
import { withDecimal } from '../../../shared/units/format';
import { lineOf } from '../../../shared/verdict/lineResult';
import { dayOf } from '../../../shared/verdict/measures';
import type { Verdict } from '../../../shared/verdict/verdict';
import { say } from '../../../shared/words/verdict';
import { phText } from '../texts';
import { alkalinityPart } from './alkalinityPart';

/** Up to here filtered water stayed clear for hours (Ringham et al. 2024). */
const CLEAR_OMEGA = 30;

/** The answer first; follows the trial's name: "holds 8.3–8.7 dKH for 60 days; …". */
export function headlineOf(verdict: Verdict, { limits }: Scenario, display: DisplayUnits): string {
  const { stopped, limewater, lines } = verdict;
  const peak = lineOf(lines, 'phHigh');
  const parts = [
    ...(stopped ? [say.stopsOnDay(String(dayOf(stopped.timeH)))] : []),
    alkalinityPart(limitBands(limits)[0]!, verdict, display),
    ...(lineOf(lines, 'omega').worst > CLEAR_OMEGA ? [say.noSuchWater] : []),
    say.phPeaks(withDecimal(phText(peak.worst), display), String(dayOf(peak.worstH))),
    ...(limewater ? [say.limewaterCovers(String(Math.round(limewater.covered * 100)))] : []),
  ];
  return `${parts.join('; ')}.`;
}
