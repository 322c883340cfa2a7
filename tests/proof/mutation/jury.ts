import type { Mutant } from './mutant';
import { reaches } from './reach';
import { tried, type Came } from './trial';
import { usualMs } from './usual';

/** The tests as they are asked of one mutant after another. */
export class Jury {
  private readonly kills = new Map<string, number>();

  private constructor(
    private readonly reached: ReadonlyMap<string, ReadonlySet<string>>,
    private readonly usual: ReadonlyMap<string, number>,
    /** What those that are asked take together without a mutant, at most. */
    private readonly withinMs: number,
  ) {}

  static async of(withinMs: number): Promise<Jury> {
    const reached = reaches();
    return new Jury(reached, await usualMs([...reached.keys()]), withinMs);
  }

  /** Those whose imports reach a file: the fastest first, and sooner what has killed before. */
  private asked(file: string): string[] {
    const cost = (test: string) => this.usual.get(test)! / (1 + 4 * (this.kills.get(test) ?? 0));
    const tests = [...this.reached].filter(([, files]) => files.has(file)).map(([test]) => test);
    let sum = 0;
    return tests
      .toSorted((a, b) => cost(a) - cost(b))
      .filter((test) => (sum += this.usual.get(test)!) <= this.withinMs);
  }

  async tries(mutant: Mutant): Promise<Came> {
    // The first test waits for all modules, and a busy machine is no endless loop.
    const patience = (test: string) => 30_000 + 8 * this.usual.get(test)!;
    const came = await tried({ tests: this.asked(mutant.fileName), mutant }, patience);
    if (came.fell) this.kills.set(came.fell, (this.kills.get(came.fell) ?? 0) + 1);
    return came;
  }
}
