import type { Switching } from '../../../shared/verdict/drillOutcome';
import { WATER } from '../../../shared/species/block';
import type { Simulation } from '../../engine/simulation';

/** Writes down when the pipes of a tank open and close; vapour and what runs all day are left out. */
export class PipeLog {
  readonly switchings: Switching[] = [];
  private readonly open = new Map<string, boolean>();

  /** To be called after each step: what flowed during it began where it began. */
  note({ plan, step, books }: Simulation): void {
    for (const { pipes } of plan.devices) {
      for (const { id, role, from, kgPerH, vapour } of pipes) {
        if (vapour) continue;
        const opens = kgPerH > 0;
        const was = this.open.get(id) ?? false;
        if (opens === was) continue;
        this.open.set(id, opens);
        const dry =
          !opens && from !== 'tank' && from !== 'outside' && books.vessel(from)[WATER]! <= 0;
        this.switchings.push({ timeH: step.fromH, pipe: id, role, opens, dry });
      }
    }
  }
}
