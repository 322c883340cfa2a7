import type { Crossing } from '../../shared/trace/trace';
import type { LineResult } from '../../shared/verdict/lineResult';
import type { Line } from '../../shared/verdict/lines';

interface Worst {
  readonly value: number;
  readonly timeH: number;
}

/** Turns crossings into what a keeper asks of a line: when first, how long, when back. */
export function lineResult(
  line: Line,
  crossings: readonly Crossing[],
  worst: Worst,
  fromH: number,
  endH: number,
): LineResult {
  const own = crossings.filter(({ limit }) => limit === line.id);
  const already = own.filter(({ timeH }) => timeH < fromH).at(-1)?.into === 'outside';
  const after = own.filter(({ timeH }) => timeH >= fromH);
  let outsideH = 0;
  let leftH = already ? fromH : undefined;
  for (const { timeH, into } of after) {
    if (into === 'outside') leftH ??= timeH;
    else if (leftH !== undefined) {
      outsideH += timeH - leftH;
      leftH = undefined;
    }
  }
  const firstH = already ? fromH : after.find(({ into }) => into === 'outside')?.timeH;
  const isBack = firstH !== undefined && leftH === undefined;
  return {
    ...line,
    ...{ firstH, already, worst: worst.value, worstH: worst.timeH },
    outsideH: outsideH + (leftH === undefined ? 0 : endH - leftH),
    backH: isBack ? after.findLast(({ into }) => into === 'inside')!.timeH : undefined,
  };
}
