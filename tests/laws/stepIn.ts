const SAMPLES = 32;
const HALVINGS = 40;

/**
 * What is left of the steepest rise of a function from 0 to 1 once it is looked at ever more
 * nearly, as a part of its largest value: a ramp, however narrow, leaves nothing, a step itself.
 */
export function stepIn(at: (part: number) => number): number {
  const values = Array.from({ length: SAMPLES + 1 }, (_, i) => at(i / SAMPLES));
  const largest = Math.max(...values.map(Math.abs));
  if (largest === 0) return 0;
  const rises = values.slice(1).map((value, i) => Math.abs(value - values[i]!));
  const steepest = rises.indexOf(Math.max(...rises));
  let [low, high] = [steepest / SAMPLES, (steepest + 1) / SAMPLES];
  let [below, above] = [values[steepest]!, values[steepest + 1]!];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    const value = at(middle);
    if (Math.abs(value - below) > Math.abs(above - value)) [high, above] = [middle, value];
    else [low, below] = [middle, value];
  }
  return Math.abs(above - below) / largest;
}
