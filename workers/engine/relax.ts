/** Below this the closed forms would lose digits to cancellation. */
const SMALL = 0.3;
const TERMS = 12;

/**
 * What is left of a start, and of forcings that stay, rise evenly and bend, after a part of a step
 * through which e^−decay is kept: the integrals of e^(−decay·(part − s))·s^j over s from 0 to part,
 * for j = 0, 1, 2. Written into `into` as kept, even, rising, bending.
 */
export function relax(decay: number, part: number, into: Float64Array): void {
  const x = decay * part;
  into[0] = Math.exp(-x);
  if (x >= SMALL) {
    into[1] = (1 - into[0]) / decay;
    into[2] = (part - into[1]) / decay;
    into[3] = (part * part - 2 * into[2]) / decay;
    return;
  }
  let power = part;
  for (let j = 0; j < 3; j++) {
    let term = power / (j + 1);
    let sum = term;
    for (let m = 1; m < TERMS; m++) {
      term *= -x / (j + 1 + m);
      sum += term;
    }
    into[j + 1] = sum;
    power *= part;
  }
}
