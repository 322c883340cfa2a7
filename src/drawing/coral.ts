import { fixed } from '../../shared/units/digits';
/** A branch of a drawn coral: a stroke and how thick it is. */
export interface Branch {
  readonly d: string;
  readonly width: number;
}

const oneDecimal = (value: number) => fixed(value, 1);

/** The same wobble every time, 0–1: a drawing does not tremble while the cursor moves. */
function wobble(seed: number): number {
  const x = Math.sin(seed * 12.9898) * 43758.5453;
  return x - Math.floor(x);
}

/**
 * A branching coral on its foot at (x, y). `grown`, 0–1, is the share of the trial's skeleton that is
 * laid down: its branches are drawn far larger than life, or nobody would see them grow.
 */
export function coral(x: number, y: number, size: number, seed: number, grown: number): Branch[] {
  const length = size * (0.62 + 0.38 * grown);
  const branches: Branch[] = [];
  const grow = (fromX: number, fromY: number, angle: number, long: number, depth: number) => {
    const bend = (wobble(seed + depth * 7 + branches.length) - 0.5) * 0.5;
    const [toX, toY] = [fromX + long * Math.sin(angle), fromY - long * Math.cos(angle)];
    const [midX, midY] = [
      (fromX + toX) / 2 + bend * long * Math.cos(angle),
      (fromY + toY) / 2 + bend * long * Math.sin(angle),
    ];
    const curve = `M${oneDecimal(fromX)} ${oneDecimal(fromY)}Q${oneDecimal(midX)} ${oneDecimal(midY)} ${oneDecimal(toX)} ${oneDecimal(toY)}`;
    branches.push({ d: curve, width: 0.9 + depth * 0.8 });
    if (depth === 0) return;
    const spread = 0.42 + 0.2 * wobble(seed + branches.length);
    grow(toX, toY, angle - spread, long * 0.74, depth - 1);
    grow(toX, toY, angle + spread * 0.9, long * 0.7, depth - 1);
  };
  grow(x, y, (wobble(seed) - 0.5) * 0.3, length * 0.34, 4);
  return branches;
}
