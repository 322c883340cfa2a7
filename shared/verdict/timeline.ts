import { faultKinds } from '../faults/faultKinds';
import { momentH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { readColumn, readLedger } from '../trace/trace';
import { say } from '../words/drillTold';
import { figure, figureText } from '../words/figure';
import { spanText } from './clockText';
import type { DrillOutcome, LineResult } from './drillOutcome';
import { lineTexts, limitText } from './lineTexts';
import { phText } from './texts';

/** One entry of what happens, in a few words. */
export interface Moment {
  readonly timeH: number;
  readonly text: string;
  /** Whether a line is passed that means harm, or water on the floor. */
  readonly grave: boolean;
}

/** Told one by one; the rest is in the table. */
const TOLD = [
  'phHigh',
  'phHarm',
  'phLow',
  'alkalinityHigh',
  'alkalinityLow',
  'salinityLow',
  'salinityHigh',
];

const phTold = (ph: number) => figureText(phText(ph));
const limitTold = (...line: Parameters<typeof limitText>) => figureText(limitText(...line));

const moment = (timeH: number, text: string, grave = false): Moment => ({ timeH, text, grave });

function ofFaults({ faults, start, days }: Scenario): Moment[] {
  return faults.flatMap((fault) => {
    const { label, lasts } = faultKinds[fault.kind];
    const fromH = momentH(fault, start.clockHour);
    const toH = fromH + fault.hours;
    return [
      moment(fromH, label),
      ...(lasts && toH <= days * 24 ? [moment(toH, say.putRight(label))] : []),
    ];
  });
}

function ofLine({ id, quantity, limit, trouble, firstH, backH, already }: LineResult): Moment[] {
  if (firstH === undefined || already || !TOLD.includes(id)) return [];
  const name = lineTexts[quantity].name;
  const text = limitTold(quantity, limit);
  const [goes, back] =
    trouble === 'above' ? [say.passesAbove, say.backBelow] : [say.fallsBelow, say.backAbove];
  return [
    moment(firstH, goes(name, text), id === 'phHarm'),
    ...(backH === undefined ? [] : [moment(backH, back(name, text))]),
  ];
}

function ofPipes({ switchings, trace, lines }: DrillOutcome): Moment[] {
  const peak = lines.find(({ id }) => id === 'phHigh');
  const ph = readColumn(trace, 'ph_nbs');
  const phAt = (timeH: number) =>
    peak && Math.abs(peak.worstH - timeH) < 0.05
      ? peak.worst
      : ph[Math.min(ph.length - 1, Math.round(timeH))]!;
  const dry = switchings.find(({ pipe, dry: empty }) => pipe === 'topOff' && empty);
  const spill = switchings.find(({ pipe, opens }) => pipe === 'overflow' && opens);
  return [
    ...(dry ? [moment(dry.timeH, say.runsDry(phTold(phAt(dry.timeH))))] : []),
    ...(spill ? [moment(spill.timeH, say.runsOver, true)] : []),
  ];
}

/** Told when chalk takes this much out: it explains why alkalinity falls after an overdose. */
const CHALK_DKH = 0.5;

function ofChalk({ trace }: DrillOutcome): Moment[] {
  if (!trace.ledger.some(({ id }) => id === 'precipitation')) return [];
  const taken = readLedger(trace, 'precipitation');
  const hour = taken.findIndex((dkh) => dkh < taken[0]! - CHALK_DKH);
  if (hour < 0) return [];
  const all = figure(Math.abs(taken.at(-1)! - taken[0]!), 1);
  return [moment(hour, say.chalk(all))];
}

/** What happens in a drill, in order of time. */
export function timelineOf(scenario: Scenario, outcome: DrillOutcome): Moment[] {
  return [
    ...ofFaults(scenario),
    ...ofPipes(outcome),
    ...ofChalk(outcome),
    ...outcome.lines.flatMap(ofLine),
    ...(outcome.stopped ? [moment(outcome.stopped.timeH, outcome.stopped.reason, true)] : []),
  ].sort((a, b) => a.timeH - b.timeH);
}

/** The answer in a sentence: the highest pH, how long it is beyond the keeper's limit, the rest. */
export function drillHeadline({ lines }: DrillOutcome): string {
  const of = (id: string) => lines.find((line) => line.id === id)!;
  const [high, harm] = [of('phHigh'), of('phHarm')];
  const passed = lines.filter(({ firstH, already }) => firstH !== undefined && !already);
  const peak = phTold(high.worst);
  if (passed.length === 0) return say.allInside(peak);
  if (high.firstH === undefined) {
    const sides = passed.map(({ quantity, trouble, limit }) =>
      (trouble === 'above' ? say.goesAbove : say.goesBelow)(
        lineTexts[quantity].name,
        limitTold(quantity, limit),
      ),
    );
    return say.phInsideBut(peak, sides.join(', '));
  }
  const isBack = high.backH !== undefined;
  const [harmPh, highPh, span] = [figure(harm.limit), figure(high.limit), spanText(high.outsideH)];
  if (harm.firstH === undefined) {
    return (isBack ? say.phBelowHarm : say.phBelowHarmNotBack)(peak, harmPh, highPh, span);
  }
  const harmSpan = spanText(harm.outsideH);
  return (isBack ? say.phAboveHarm : say.phAboveHarmNotBack)(peak, harmPh, harmSpan, highPh, span);
}
