import type { Scenario } from '../../../shared/scenario/schema';
import { clockText, spanText } from '../../../shared/verdict/clockText';
import { drillLines } from '../../../shared/verdict/lines';
import { limitText, lineTexts } from '../../../shared/verdict/lineTexts';
import { usualSpreads } from '../../../shared/verdict/spreads';
import { drillHeadline, timelineOf } from '../../../shared/verdict/timeline';
import type { SimulationOptions } from '../../engine/simulation';
import { runDrill } from './drillRun';
import { summaryOf, type Quantiles } from './ensembleSummary';
import { memberOptions, runMember } from './memberResult';

/** A drill as the command line tells it: what happens, moment by moment. */
export function drillText(scenario: Scenario, options: SimulationOptions): string {
  const outcome = runDrill(scenario, options);
  const moments = timelineOf(scenario, outcome).map(
    ({ timeH, text }) => `  ${clockText(timeH, scenario.start.clockHour)}  ${text}`,
  );
  return [`The drill: ${drillHeadline(outcome)}`, ...moments].join('\n');
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
  const ownOptions = memberOptions(scenario, options);
  const results = Array.from({ length: members }, (_, index) =>
    runMember(scenario, usualSpreads, seed, index, ownOptions),
  );
  const { lines, dryAfterH } = summaryOf(results);
  const rows = drillLines(scenario).map(({ quantity, limit, trouble }, i) => {
    const { share, afterH, worst } = lines[i]!;
    const { name, format } = lineTexts[quantity];
    const passed =
      share === 0
        ? 'none passes it'
        : `${(share * 100).toFixed(1)} % pass it, after ${range(afterH, spanText)}`;
    return `  ${name} ${trouble} ${limitText(quantity, limit)}: ${passed}; worst ${range(worst, format)}`;
  });
  return [
    `${members} tanks, seed ${seed}; 5 / 50 / 95 %:`,
    ...rows,
    `  reservoir empty after ${range(dryAfterH, spanText)}`,
  ].join('\n');
}
