import { faultKinds } from '../faults/faultKinds';
import { momentH } from '../scenario/clock';
import type { Scenario } from '../scenario/schema';
import { readColumn, readLedger } from '../trace/trace';
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

const moment = (timeH: number, text: string, grave = false): Moment => ({ timeH, text, grave });

function ofFaults({ faults, start, days }: Scenario): Moment[] {
  return faults.flatMap((fault) => {
    const { label, lasts } = faultKinds[fault.kind];
    const fromH = momentH(fault, start.clockHour);
    const toH = fromH + fault.hours;
    return [
      moment(fromH, label),
      ...(lasts && toH <= days * 24 ? [moment(toH, `noticed and put right: ${label}`)] : []),
    ];
  });
}

function ofLine({ id, quantity, limit, trouble, firstH, backH, already }: LineResult): Moment[] {
  if (firstH === undefined || already || !TOLD.includes(id)) return [];
  const name = lineTexts[quantity].name;
  const verb = trouble === 'above' ? 'passes' : 'falls below';
  const return_ = trouble === 'above' ? 'below' : 'above';
  return [
    moment(firstH, `${name} ${verb} ${limitText(quantity, limit)}`, id === 'phHarm'),
    ...(backH === undefined
      ? []
      : [moment(backH, `${name} back ${return_} ${limitText(quantity, limit)}`)]),
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
    ...(dry ? [moment(dry.timeH, `reservoir empty, pH ${phText(phAt(dry.timeH))}`)] : []),
    ...(spill ? [moment(spill.timeH, 'the sump runs over onto the floor', true)] : []),
  ];
}

/** Told when chalk takes this much out: it explains why alkalinity falls after an overdose. */
const CHALK_DKH = 0.5;

function ofChalk({ trace }: DrillOutcome): Moment[] {
  if (!trace.ledger.some(({ id }) => id === 'precipitation')) return [];
  const taken = readLedger(trace, 'precipitation');
  const hour = taken.findIndex((dkh) => dkh < taken[0]! - CHALK_DKH);
  if (hour < 0) return [];
  const all = Math.abs(taken.at(-1)! - taken[0]!).toFixed(1);
  return [moment(hour, `chalk falls out and takes ${all} dKH along (illustration)`)];
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
  if (passed.length === 0) {
    return `Everything stays inside your limits; pH peaks at ${phText(high.worst)}.`;
  }
  if (high.firstH === undefined) {
    const sides = passed.map(
      ({ quantity, trouble, limit }) =>
        `${lineTexts[quantity].name} goes ${trouble} ${limitText(quantity, limit)}`,
    );
    return `pH peaks at ${phText(high.worst)}, inside your limit; but ${sides.join(', ')}.`;
  }
  const harmText =
    harm.firstH === undefined
      ? `it stays below ${harm.limit}, and is`
      : `it is above ${harm.limit} for ${spanText(harm.outsideH)}, and`;
  const back = high.backH === undefined ? ', not back within the drill' : '';
  return `pH peaks at ${phText(high.worst)}; ${harmText} above your ${high.limit} for ${spanText(high.outsideH)}${back}.`;
}
