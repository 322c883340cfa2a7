import { toDecimals } from '../../shared/units/digits';
import { figure } from '../../shared/words/figure';
import { say } from '../../shared/words/pictures';
import { rowName } from '../say/rowName';
import { ledgerBetween, lastOf } from '../../shared/verdict/measures';
import { readColumn, type Trace } from '../../shared/trace/trace';

export interface Stream {
  readonly id: string;
  readonly label: string;
  /** What it carried, dKH of the start volume; never negative. */
  readonly dkh: number;
}

/** Where alkalinity came from and where it went over a whole trial, as the ledger booked it. */
export interface Flow {
  readonly brought: readonly Stream[];
  readonly taken: readonly Stream[];
  readonly startDkh: number;
  readonly endDkh: number;
  readonly days: number;
  readonly skeletonG: number;
}

/** Thinner streams than this part of the widest are not worth a line. */
const LEAST_SHARE = 0.004;

export function flowOf(trace: Trace): Flow {
  const hours = trace.rows - 1;
  const booked = trace.ledger.map((row) => ({
    ...{ id: row.id, label: rowName(row) },
    dkh: ledgerBetween(trace, row.id, 0, hours),
  }));
  const widest = Math.max(...booked.map(({ dkh }) => Math.abs(dkh)), 1e-9);
  const streams = (sign: number): Stream[] =>
    booked
      .filter(({ dkh }) => sign * dkh > widest * LEAST_SHARE)
      .map((stream) => ({ ...stream, dkh: Math.abs(stream.dkh) }))
      .sort((a, b) => b.dkh - a.dkh);
  return {
    brought: streams(1),
    taken: streams(-1),
    startDkh: readColumn(trace, 'alkalinity_dkh')[0]!,
    endDkh: lastOf(trace, 'alkalinity_dkh'),
    days: hours / 24,
    skeletonG: lastOf(trace, 'skeleton_g'),
  };
}

const { flow: told } = say;

/** The picture in words. */
export function flowSentence(flow: Flow): string {
  const list = (streams: readonly Stream[]) =>
    streams.map(({ label, dkh }) => told.stream(label, figure(dkh, 2))).join(', ');
  const { brought, taken } = flow;
  return [
    told.in(figure(toDecimals(flow.days, 1))),
    brought.length > 0 ? told.brought(list(brought)) : told.nothingBrought,
    taken.length > 0 ? told.taken(list(taken)) : told.nothingTaken,
    told.goes(figure(flow.startDkh, 2), figure(flow.endDkh, 2), figure(flow.skeletonG, 0)),
  ].join(' ');
}
