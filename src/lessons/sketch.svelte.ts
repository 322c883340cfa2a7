interface Pen {
  readonly timeH: number;
  readonly value: number;
}

/** A line drawn by hand over the hours of a lesson: from where the tank begins to where it was let go. */
export class Sketch {
  /** Where the pen was, hour after hour. */
  private points: readonly Pen[] = $state.raw([]);
  private pen: Pen | undefined;

  constructor(private readonly begins: number) {}

  get isEmpty(): boolean {
    return this.points.length === 0;
  }

  /** The pen is put down, or goes on from where it was: what it passes over is drawn anew. */
  draw(timeH: number, value: number, isDown: boolean): void {
    const to = { timeH: Math.max(1, Math.round(timeH)), value };
    const from = isDown || !this.pen || this.pen.timeH === to.timeH ? undefined : this.pen;
    const [left, right] = [from ?? to, to].map((pen) => pen.timeH).toSorted((a, b) => a - b);
    const kept = this.points.filter((point) => point.timeH < left! || point.timeH > right!);
    this.points = [...kept, ...(from ? [from] : []), to].toSorted((a, b) => a.timeH - b.timeH);
    this.pen = to;
  }

  clear(): void {
    this.points = [];
    this.pen = undefined;
  }

  /** Hour by hour; what was left out is joined by straight lines. */
  get values(): Float64Array {
    const points = [{ timeH: 0, value: this.begins }, ...this.points];
    const values = new Float64Array(points.at(-1)!.timeH + 1);
    points.forEach((left, i) => {
      const right = points[i + 1] ?? left;
      for (let hour = left.timeH; hour <= right.timeH; hour++) {
        values[hour] = between(left, right, hour);
      }
    });
    return values;
  }
}

const between = (left: Pen, right: Pen, timeH: number): number =>
  right.timeH === left.timeH
    ? right.value
    : left.value + ((right.value - left.value) * (timeH - left.timeH)) / (right.timeH - left.timeH);
