import { endOf } from '../../../shared/faults/endOf';
import { faultKinds } from '../../../shared/faults/faultKinds';
import { momentH } from '../../../shared/scenario/clock';
import type { Scenario } from '../../../shared/scenario/schema';
import { readColumn } from '../../../shared/trace/trace';
import { say } from '../../../shared/words/drillTold';
import { figureText } from '../../../shared/words/figure';
import type { DrillAnswer, DrillOutcome } from '../../../shared/verdict/drillOutcome';
import { lineOf, type LineResult } from '../../../shared/verdict/lineResult';
import { soonestOxygenH } from '../../../shared/verdict/oxygenLeft';
import { lineTexts, limitText } from '../lineTexts';
import { phText } from '../texts';
import { stoppedSentence } from '../verdict/stopped';

/** One entry of what happens, in a few words. */
export interface Moment {
  readonly timeH: number;
  readonly text: string;
  /** Whether a line is passed that means harm, or water on the floor. */
  readonly grave: boolean;
}

/** Told one by one; the rest is in the table. */
const TOLD = [
  'oxygenLow',
  'oxygenHarm',
  'phHigh',
  'phHarm',
  'phLow',
  'alkalinityHigh',
  'alkalinityLow',
  'alkalinityHarm',
  'temperatureHigh',
  'temperatureLow',
  'temperatureHarm',
  'ammonia',
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
    const toH = endOf(fault, start.clockHour);
    return [
      moment(fromH, label),
      ...(lasts && toH <= days * 24 ? [moment(toH, say.putRight(label))] : []),
    ];
  });
}

type Ends = Pick<DrillAnswer, 'outcome' | 'closed'>;

/** A line as it is set; of oxygen, whose time nobody knows well, the soonest end before it. */
function ofLine(line: LineResult, ends: Ends): Moment[] {
  const { id, quantity, limit, trouble, firstH, backH, already } = line;
  if (already || !TOLD.includes(id)) return [];
  const name = lineTexts[quantity].name;
  const text = limitTold(quantity, limit);
  const [goes, back] =
    trouble === 'above' ? [say.passesAbove, say.backBelow] : [say.fallsBelow, say.backAbove];
  const [told, isGrave] = [goes(name, text), id.endsWith('Harm')];
  const soonestH = soonestOxygenH(line, ends);
  return [
    ...(soonestH === undefined ? [] : [moment(soonestH, say.atTheSoonest(told), isGrave)]),
    ...(firstH === undefined
      ? []
      : [moment(firstH, soonestH === undefined ? told : say.asSet(told), isGrave)]),
    ...(backH === undefined ? [] : [moment(backH, back(name, text))]),
  ];
}

function ofPipes({ switchings, trace, lines }: DrillOutcome): Moment[] {
  const peak = lineOf(lines, 'phHigh');
  const ph = readColumn(trace, 'ph_nbs');
  const phAt = (timeH: number) =>
    Math.abs(peak.worstH - timeH) < 0.05
      ? peak.worst
      : ph[Math.min(ph.length - 1, Math.round(timeH))]!;
  const dry = switchings.find(({ role, dry: empty }) => role === 'topOff' && empty);
  const spill = switchings.find(({ role, opens }) => role === 'spill' && opens);
  return [
    ...(dry ? [moment(dry.timeH, say.runsDry(phTold(phAt(dry.timeH))))] : []),
    ...(spill ? [moment(spill.timeH, say.runsOver, true)] : []),
  ];
}

/** What happens in a drill, in order of time. */
export function timelineOf(scenario: Scenario, ends: Ends): Moment[] {
  const { outcome } = ends;
  return [
    ...ofFaults(scenario),
    ...ofPipes(outcome),
    ...outcome.lines.flatMap((line) => ofLine(line, ends)),
    ...(outcome.stopped
      ? [moment(outcome.stopped.timeH, stoppedSentence(outcome.stopped), true)]
      : []),
  ].sort((a, b) => a.timeH - b.timeH);
}
