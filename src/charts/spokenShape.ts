import { say } from '../../shared/words/charts';
import type { Series } from './chartScales';
import type { TimeWindow } from './timeWindow';

/** What a line does in the stretch on view, for who cannot see it. */
export function spokenShape(
  { label, values }: Series,
  { fromH, toH }: TimeWindow,
  format: (value: number) => string,
): string {
  const last = values.length - 1;
  const at = (timeH: number) => Math.max(0, Math.min(last, Math.round(timeH)));
  const [from, to] = [at(fromH), at(toH)];
  let [low, high] = [from, from];
  for (let i = from; i <= to; i++) {
    if (values[i]! < values[low]!) low = i;
    if (values[i]! > values[high]!) high = i;
  }
  const said = [from, to, low, high].map((i) => format(values[i]!));
  return say.shape(label, said[0]!, said[1]!, said[2]!, said[3]!);
}
