import type { TankEvent } from '../../../shared/events/event';
import { gramsForDkh } from '../../../shared/recipe/gramsFor';
import { dissolve } from '../../../shared/species/additives';
import { isSudden } from './restlessness';
import type { Shared } from './tried';
import { surest } from './surest';
import { sumOf } from './slopes';
import type { Row } from './wander';

/** Between two readings the water came to stand elsewhere, and no line of the log says why. */
export interface Leap {
  /** When the one and the other was read, hours since the start of the log. */
  readonly beforeH: number;
  readonly afterH: number;
  readonly byDkh: number;
}

/** Leaps of the level that are likelier than rest. */
export function leapsOf(all: readonly Shared[], rows: readonly Row[]): Leap[] {
  const found = surest(all, ({ kind }) => isSudden(kind));
  if (!found) return [];
  const { mean } = found.found;
  const errors = found.found.errors();
  // Nothing else wanders there: what neither the run nor an error explains is the leap.
  const tests = rows.flatMap(({ timeH, wanders, left, slopes }, i) =>
    wanders ? [{ timeH, wanderedDkh: left - errors[i]!.mean - sumOf(slopes, mean) }] : [],
  );
  return found.kind.leaps!.atH.map((atH) => {
    const next = tests.findIndex(({ timeH }) => timeH > atH);
    const [before, after] = [tests[next - 1]!, tests[next]!];
    return {
      ...{ beforeH: before.timeH, afterH: after.timeH },
      byDkh: after.wanderedDkh - before.wanderedDkh,
    };
  });
}

/** So much of a leap may be missing on the way back. */
const BACK = 0.5;

/** Leaps to a single reading and back from it: that reading strays, and no water leapt. */
export function thereAndBack(leaps: readonly Leap[]): Set<number> {
  const stray = leaps.flatMap(({ afterH, byDkh }, i) => {
    const back = leaps[i + 1];
    if (back?.beforeH !== afterH) return [];
    const least = Math.min(Math.abs(byDkh), Math.abs(back.byDkh));
    return byDkh * back.byDkh < 0 && Math.abs(byDkh + back.byDkh) <= BACK * least ? [i, i + 1] : [];
  });
  return new Set(stray);
}

/** As if that much bicarbonate had gone in, or out, half way between the two readings. */
export function leapt({ beforeH, afterH }: Leap, byDkh: number, volumeL: number): TankEvent {
  const dissolved = dissolve(
    'sodiumBicarbonate',
    gramsForDkh('sodiumBicarbonate', Math.abs(byDkh), volumeL),
  );
  const [from, to] = byDkh > 0 ? (['outside', 'tank'] as const) : (['tank', 'outside'] as const);
  return {
    timeH: (beforeH + afterH) / 2,
    apply: (_view, plant) => plant.transfer('addition', from, to, dissolved),
  };
}
