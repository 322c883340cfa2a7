import type { Scenario } from '../../../shared/scenario/schema';
import { OUTDOOR_PPM } from '../../engine/weather';
import type { Watch } from './breaches';
import { knownBetter, targetsAside, twoDigits } from './changeTried';
import { judged, type Judged, type Refusal } from './offered';
import type { UseEnds } from './useEnds';
import type { Way } from './ways';

/** The nearest that would do where a plan is refused: one thing changed, solved on the engine. */
export type Nearest = { readonly scenario: Scenario } & (
  | { readonly kind: 'otherWay'; readonly way: Omit<Way, 'scenario'> }
  | { readonly kind: 'knownUse'; readonly giveOrTakeDkhPerDay: number }
  | {
      readonly kind: 'target';
      readonly dkh: number;
      readonly giveOrTakeDkhPerDay: number;
    }
  | { readonly kind: 'roomCo2'; readonly ppm: number }
);

export interface Refused {
  readonly way: Way;
  readonly refusal: Refusal;
  readonly giveOrTakeDkhPerDay: number;
  /** The same way, solved anew. */
  readonly solved: (change: { readonly targetDkh?: number; readonly co2Ppm?: number }) => Way;
}

/** Shares of the way from the target to the middle of the band. */
const ASIDE = [0.25, 0.5, 1];
/** Shares of what the consumption is known to, and of the room's CO2, that are tried. */
const SURER = [0.75, 0.5, 0.25, 0.1];
const FRESHER = [0.5, 0.25, 0];

const does = ({ refusal }: Judged) => refusal === undefined;

/** Tried in turn: knowing more, fresher air, another target. */
export function nearest(watch: Watch, endsOf: UseEnds, refused: Refused): Nearest | undefined {
  return (
    knownUse(watch, endsOf, refused) ??
    freshAir(watch, endsOf, refused) ??
    aside(watch, endsOf, refused)
  );
}

function knownUse(
  watch: Watch,
  endsOf: UseEnds,
  { way, giveOrTakeDkhPerDay }: Refused,
): Nearest | undefined {
  const { scenario } = way;
  if (!does(judged(watch, endsOf, scenario, 0))) return undefined;
  const enough = knownBetter(giveOrTakeDkhPerDay, SURER, (by) =>
    does(judged(watch, endsOf, scenario, by)),
  );
  return enough === undefined
    ? undefined
    : { kind: 'knownUse', giveOrTakeDkhPerDay: enough, scenario };
}

function freshAir(
  watch: Watch,
  endsOf: UseEnds,
  { refusal, solved, giveOrTakeDkhPerDay, way }: Refused,
): Nearest | undefined {
  if (refusal.kind !== 'breach' || refusal.breach.id !== 'phLow') return undefined;
  const { co2Ppm } = way.scenario.room;
  for (const share of FRESHER) {
    const ppm = twoDigits(OUTDOOR_PPM + share * (co2Ppm - OUTDOOR_PPM));
    if (ppm >= co2Ppm) continue;
    const { scenario } = solved({ co2Ppm: ppm });
    if (does(judged(watch, endsOf, scenario, giveOrTakeDkhPerDay)))
      return { kind: 'roomCo2', ppm, scenario };
  }
  return undefined;
}

function aside(
  watch: Watch,
  endsOf: UseEnds,
  { way, solved, giveOrTakeDkhPerDay }: Refused,
): Nearest | undefined {
  const { limits, tank } = way.scenario;
  const targets = targetsAside(tank.alkalinityDkh, limits, ASIDE);
  const at = (dkh: number, by: number): Nearest | undefined => {
    const { scenario } = solved({ targetDkh: dkh });
    return does(judged(watch, endsOf, scenario, by))
      ? { kind: 'target', dkh, giveOrTakeDkhPerDay: by, scenario }
      : undefined;
  };
  const surest = twoDigits(SURER.at(-1)! * giveOrTakeDkhPerDay);
  for (const dkh of targets) {
    const found = at(dkh, giveOrTakeDkhPerDay);
    if (found) return found;
  }
  return at(targets.at(-1)!, surest);
}
