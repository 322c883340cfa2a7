import { figure } from '../../shared/words/figure';
import type { Scenario } from '../../shared/scenario/schema';
import { clockText, spanText } from '../say/clockText';
import { watchedLines } from '../../shared/verdict/lines';
import { limitText, lineTexts } from '../say/lineTexts';
import { drillSentences } from '../say/drill/drillSentences';
import { timelineOf } from '../say/drill/timeline';
import type { SimulationOptions } from '../../workers/engine/simulation';
import { ensembleOf } from '../../workers/studies/drill/ensembleOf';
import type { Quantiles } from '../../workers/studies/drill/ensembleSummary';
import { rehearse } from '../../workers/studies/drill/rehearse';

/** A drill as the command line tells it: what happens, moment by moment. */
export async function drillText(scenario: Scenario, options: SimulationOptions): Promise<string> {
  const answer = (await rehearse(scenario, options, async () => true))!;
  const moments = timelineOf(scenario, answer).map(
    ({ timeH, text }) => `  ${clockText(timeH, scenario.start.clockHour)}  ${text}`,
  );
  return [`The drill: ${drillSentences(answer, scenario).join('\n')}`, ...moments].join('\n');
}

const range = (spread: Quantiles | undefined, text: (value: number) => string): string =>
  spread ? [spread.low, spread.middle, spread.high].map(text).join(' / ') : 'never';

/** Quantiles of an ensemble with the usual spreads: 5, 50 and 95 %, one line a limit. */
export function ensembleText(
  scenario: Scenario,
  members: number,
  seed: number,
  options: SimulationOptions,
): string {
  const { lines, dryShare, dryAfterH } = ensembleOf(scenario, members, seed, options);
  const rows = watchedLines(scenario).map(({ quantity, limit, trouble }, i) => {
    const { share, afterH, worst } = lines[i]!;
    const { name, format } = lineTexts[quantity];
    const passed =
      share === 0
        ? 'none passes it'
        : `${figure(share * 100, 1)} % pass it, after ${range(afterH, spanText)}`;
    return `  ${name} ${trouble} ${limitText(quantity, limit)}: ${passed}; worst ${range(worst, format)}`;
  });
  return [
    `${members} tanks, seed ${seed}; 5 / 50 / 95 %:`,
    ...rows,
    `  reservoir empty before it was noticed: ${figure(dryShare * 100, 1)} %, after ${range(dryAfterH, spanText)}`,
  ].join('\n');
}
