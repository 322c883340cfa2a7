import { max } from 'd3-array';
import { endOf } from '../../shared/faults/endOf';
import { faultKinds } from '../../shared/faults/faultKinds';
import { momentH } from '../../shared/scenario/clock';
import type { Scenario } from '../../shared/scenario/schema';
import { readColumn, readLedger, type Trace } from '../../shared/trace/trace';

/** What the drawn tank shows at one hour; every number is read from the trace. */
export interface Scene {
  readonly timeH: number;
  /** 0–1. */
  readonly light: number;
  /** Above where it began, as a share of the room to the rim: 1 runs over, −1 is as far below. */
  readonly levelShare: number;
  readonly reservoirL: number;
  /** 0–1; undefined where there is no reservoir. */
  readonly reservoirShare: number | undefined;
  /** Brought and taken in the hour that ends here, dKH of the start volume; both 0 or more. */
  readonly broughtDkh: number;
  readonly tookDkh: number;
  readonly toppedOffL: number;
  readonly alkalinityDkh: number;
  readonly phNbs: number;
  readonly ph: 'inside' | 'low' | 'high' | 'harm';
  readonly waterPco2Uatm: number;
  readonly roomPco2Uatm: number;
  /** Laid down since the start, g; and as a share of what the whole trial lays down, 0–1. */
  readonly skeletonG: number;
  readonly skeletonShare: number;
  /** What is failing at this hour, in words. */
  readonly failing: readonly string[];
}

/** What the ledger brings (+) or takes (−) in each hour, dKH of the start volume. */
export interface HourlyLedger {
  readonly broughtDkh: Float64Array;
  readonly tookDkh: Float64Array;
}

export function hourlyLedger(trace: Trace): HourlyLedger {
  const [broughtDkh, tookDkh] = [new Float64Array(trace.rows), new Float64Array(trace.rows)];
  for (const { id } of trace.ledger) {
    const sum = readLedger(trace, id);
    for (let hour = 1; hour < trace.rows; hour++) {
      const dkh = sum[hour]! - sum[hour - 1]!;
      if (dkh > 0) broughtDkh[hour]! += dkh;
      else tookDkh[hour]! -= dkh;
    }
  }
  return { broughtDkh, tookDkh };
}

/** What the widest arrow of alkalinity stands for, dKH in an hour. */
export const widestOf = ({ broughtDkh, tookDkh }: HourlyLedger): number =>
  max([...broughtDkh, ...tookDkh]) ?? 0;

function failingAt({ faults, start }: Scenario, timeH: number): string[] {
  return faults
    .filter((fault) => {
      const fromH = momentH(fault, start.clockHour);
      const { lasts } = faultKinds[fault.kind];
      return timeH >= fromH && timeH <= (lasts ? endOf(fault, start.clockHour) : fromH + 1);
    })
    .map(({ kind }) => faultKinds[kind].label);
}

function phAgainst(phNbs: number, { phLowNbs, phHighNbs, phHarmNbs }: Scenario['limits']) {
  if (phNbs > phHarmNbs) return 'harm';
  if (phNbs > phHighNbs) return 'high';
  return phNbs < phLowNbs ? 'low' : 'inside';
}

/** The tank at an hour of its trial. */
export function sceneAt(
  trace: Trace,
  scenario: Scenario,
  { broughtDkh, tookDkh }: HourlyLedger,
  cursorH: number,
): Scene {
  const last = trace.rows - 1;
  const timeH = Math.max(0, Math.min(last, Math.round(cursorH)));
  const at = (id: Parameters<typeof readColumn>[1], hour = timeH) => readColumn(trace, id)[hour]!;
  const { outflows, topOff, limits } = scenario;
  const skeletonG = at('skeleton_g');
  const reservoirL = at('reservoir_l');
  const phNbs = at('ph_nbs');
  return {
    ...{ timeH, reservoirL, skeletonG, phNbs },
    ...{ broughtDkh: broughtDkh[timeH]!, tookDkh: tookDkh[timeH]! },
    light: at('light'),
    levelShare: (at('volume_l') - at('volume_l', 0)) / Math.max(0.1, outflows.spareL),
    reservoirShare: topOff.reservoirL > 0 ? Math.min(1, reservoirL / topOff.reservoirL) : undefined,
    toppedOffL: timeH > 0 ? at('topoff_l') - at('topoff_l', timeH - 1) : 0,
    alkalinityDkh: at('alkalinity_dkh'),
    ph: phAgainst(phNbs, limits),
    waterPco2Uatm: at('pco2_uatm'),
    roomPco2Uatm: at('room_pco2_uatm'),
    skeletonShare: skeletonG / Math.max(1e-9, at('skeleton_g', last)),
    failing: failingAt(scenario, timeH),
  };
}
