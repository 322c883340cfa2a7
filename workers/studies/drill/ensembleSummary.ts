import { quantileSorted, rank } from 'd3-array';
import { spreadKinds, type SpreadId } from '../../../shared/verdict/spreads';
import type { MemberResult } from './memberResult';

/** 5, 50 and 95 % of something, over those members that have it. */
export interface Quantiles {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

export interface LineSummary {
  readonly id: string;
  /** Share of the tanks that pass the line. */
  readonly share: number;
  /** Hours until it is passed, in those that pass it. */
  readonly afterH: Quantiles | undefined;
  readonly outsideH: Quantiles | undefined;
  readonly worst: Quantiles;
}

export interface Cause {
  readonly id: SpreadId;
  /** Spearman's rank correlation with the highest pH. */
  readonly correlation: number;
}

export interface EnsembleSummary {
  readonly members: number;
  readonly lines: readonly LineSummary[];
  /** Share of the tanks whose reservoir was empty before anybody noticed, and after how long. */
  readonly dryShare: number;
  readonly dryAfterH: Quantiles | undefined;
  readonly ph: readonly Quantiles[];
  readonly dkh: readonly Quantiles[];
  readonly causes: readonly Cause[];
  /** The member whose highest pH 95 % of the others stay below. */
  readonly highMember: number;
}

function quantiles(values: readonly number[]): Quantiles | undefined {
  const sorted = values.toSorted((a, b) => a - b);
  const at = (p: number) => quantileSorted(sorted, p)!;
  return values.length === 0 ? undefined : { low: at(0.05), middle: at(0.5), high: at(0.95) };
}

const present = (values: readonly (number | undefined)[]) =>
  values.filter((value) => value !== undefined);

function bandOf(members: readonly MemberResult[], of: (member: MemberResult) => Float32Array) {
  const hours = Math.min(...members.map((member) => of(member).length));
  return Array.from({ length: hours }, (_, hour) =>
    quantiles(members.map((member) => of(member)[hour]!))!,
  );
}

/** Pearson's correlation of the ranks; 0 when one of the two does not vary. */
export function rankCorrelation(a: readonly number[], b: readonly number[]): number {
  const [x, y] = [rank(a), rank(b)];
  const mean = (values: Float64Array) => values.reduce((sum, v) => sum + v, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  let [xy, xx, yy] = [0, 0, 0];
  x.forEach((value, i) => {
    xy += (value - mx) * (y[i]! - my);
    xx += (value - mx) ** 2;
    yy += (y[i]! - my) ** 2;
  });
  return xx > 0 && yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
}

function lineSummary(id: string, i: number, members: readonly MemberResult[]): LineSummary {
  const own = members.map(({ lines }) => lines[i]!);
  const passed = own.filter(({ afterH }) => afterH !== undefined);
  return {
    id,
    share: passed.length / members.length,
    afterH: quantiles(present(passed.map(({ afterH }) => afterH))),
    outsideH: quantiles(passed.map(({ outsideH }) => outsideH)),
    worst: quantiles(own.map(({ worst }) => worst))!,
  };
}

/** What many tanks that the keeper's might be say together. */
export function summaryOf(members: readonly MemberResult[]): EnsembleSummary {
  const ids = members[0]!.lines.map(({ id }) => id);
  const peak = members.map(({ lines }) => lines[ids.indexOf('phHigh')]!.worst);
  const byPeak = members.map((_, i) => i).sort((a, b) => peak[a]! - peak[b]!);
  return {
    members: members.length,
    lines: ids.map((id, i) => lineSummary(id, i, members)),
    dryShare: members.filter(({ dryAfterH }) => dryAfterH !== undefined).length / members.length,
    dryAfterH: quantiles(present(members.map(({ dryAfterH }) => dryAfterH))),
    ph: bandOf(members, ({ ph }) => ph),
    dkh: bandOf(members, ({ dkh }) => dkh),
    highMember: members[byPeak[Math.floor(0.95 * (members.length - 1))]!]!.index,
    causes: spreadKinds
      .map(({ id }) => ({
        id,
        correlation: rankCorrelation(
          members.map(({ draws }) => draws[id]),
          peak,
        ),
      }))
      .sort((a, b) => Math.abs(b.correlation) - Math.abs(a.correlation)),
  };
}
