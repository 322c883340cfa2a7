import { gramsForMgPerL } from '../../../shared/recipe/gramsFor';
import { threeFigures } from '../../../shared/recipe/threeFigures';
import type { Scenario } from '../../../shared/scenario/schema';
import type { AdditiveId } from '../../../shared/species/additives';
import { toDecimals } from '../../../shared/units/digits';
import { firstMorning, MORNING_HOUR } from '../plan/firstMorning';
import type { Replay, Stretch } from '../turn/replay';
import { heldSalinity, type FirstAsked } from './firstAsked';
import { METAL_OF, metals, pptPerMgPerL, type Metal } from './metals';
import type { SeasonId } from './quantity';
import { meanOf, type SeasonTank } from './seasonTank';

/** A weighed amount each morning. */
export interface Poured {
  readonly additive: AdditiveId;
  readonly gramsPerDay: number;
}

/** A water change each day, with the keeper's mix at another salinity. */
export interface DailyChange {
  readonly percent: number;
  readonly litres: number;
  readonly salinityPractical: number;
}

const CHANGE_HOUR = 10;
/** Nobody mixes new water weaker or stronger. */
const MIXED = { least: 20, most: 42 } as const;
const TRIES = 4;
const CLOSE = { calcium: 1, magnesium: 3, salinity: 0.1 } as const;

interface Doses {
  readonly grams: Readonly<Record<Metal, number>>;
  readonly mixedTo: number;
}

/** So many mornings of weighed salts, with a change of so much water on each: what to weigh is solved on the engine. */
export class Mornings {
  private readonly firstDay: number;
  /** Of what is poured on the first mornings, the changes take part away again. */
  private readonly kept: number;
  private readonly exchanged: number;
  private readonly salinityTo: number;

  constructor(
    private readonly tank: SeasonTank,
    private readonly raise: FirstAsked['raise'],
    salinityTo: number | undefined,
    private readonly percent: number,
    private readonly days: number,
  ) {
    this.firstDay = firstMorning(tank.now.start);
    this.exchanged = 1 - (1 - percent / 100) ** days;
    this.kept = percent > 0 ? this.exchanged / ((percent / 100) * days) : 1;
    this.salinityTo = salinityTo ?? heldSalinity(tank);
  }

  /** By steps whose size hand arithmetic knows well enough; undefined where they do not get there. */
  solved(): Doses | undefined {
    const { tank, percent } = this;
    let doses: Doses = {
      grams: { calcium: 0, magnesium: 0 },
      mixedTo: percent === 0 ? tank.now.waterChanges.salinityPractical : this.salinityTo,
    };
    for (let i = 0; ; i++) {
      const off = this.offBy(this.endsOf(tank.withMornings(this.stretch(doses))));
      const isThere = (Object.keys(CLOSE) as SeasonId[]).every(
        (id) => Math.abs(off[id]) <= CLOSE[id],
      );
      if (isThere) return doses;
      if (i === TRIES) return undefined;
      doses = this.nearer(doses, off);
    }
  }

  stretch({ grams, mixedTo }: Doses): Stretch {
    const { percent, days, firstDay, raise } = this;
    const { now } = this.tank;
    const additions = Array.from({ length: days }, (_, i) => i + firstDay).flatMap((day) =>
      metals.flatMap((metal) => {
        const one = raise[metal];
        return one && grams[metal] > 0
          ? [{ day, hour: MORNING_HOUR, additive: one.additive, grams: grams[metal] }]
          : [];
      }),
    );
    const { waterChanges } = now;
    const changed: Scenario['waterChanges'] =
      percent === 0
        ? waterChanges
        : { ...waterChanges, percent, everyDays: 1, hour: CHANGE_HOUR, salinityPractical: mixedTo };
    const untilDay = days + firstDay;
    const all = [...now.additions, ...additions];
    return {
      untilDay,
      scenario: { ...now, days: untilDay, additions: all, waterChanges: changed },
    };
  }

  /** An hour after the last morning's. */
  get endsFromH(): number {
    const { clockHour } = this.tank.now.start;
    return (this.firstDay + this.days - 2) * 24 + CHANGE_HOUR - clockHour + 1;
  }

  /** Mean of the day after the last morning. */
  endsOf(replay: Replay): Record<SeasonId, number> {
    const { endsFromH: fromH } = this;
    const of = (id: SeasonId) => meanOf(replay, id, fromH, fromH + 24);
    return { calcium: of('calcium'), magnesium: of('magnesium'), salinity: of('salinity') };
  }

  poured({ grams }: Doses): Partial<Record<Metal, Poured>> {
    const poured: Partial<Record<Metal, Poured>> = {};
    for (const metal of metals) {
      const one = this.raise[metal];
      if (one && grams[metal] > 0)
        poured[metal] = { additive: one.additive, gramsPerDay: grams[metal] };
    }
    return poured;
  }

  change({ mixedTo }: Doses): DailyChange | undefined {
    const { percent, tank } = this;
    if (percent === 0) return undefined;
    return { percent, litres: (percent / 100) * tank.now.tank.volumeL, salinityPractical: mixedTo };
  }

  private offBy(ends: Record<SeasonId, number>): Record<SeasonId, number> {
    const { raise, percent } = this;
    return {
      calcium: raise.calcium ? raise.calcium.to - ends.calcium : 0,
      magnesium: raise.magnesium ? raise.magnesium.to - ends.magnesium : 0,
      salinity: percent > 0 ? this.salinityTo - ends.salinity : 0,
    };
  }

  private nearer({ grams, mixedTo }: Doses, off: Record<SeasonId, number>): Doses {
    const { raise, percent, days } = this;
    const { volumeL } = this.tank.now.tank;
    const more = (metal: Metal): number => {
      const one = raise[metal];
      if (!one) return 0;
      const missing = gramsForMgPerL(one.additive, METAL_OF[metal], off[metal], volumeL);
      return threeFigures(Math.max(0, grams[metal] + missing / (days * this.kept)));
    };
    const brought = metals.reduce(
      (ppt, metal) => ppt + off[metal] * pptPerMgPerL(metal, raise[metal]?.additive),
      0,
    );
    const next = { calcium: more('calcium'), magnesium: more('magnesium') };
    if (percent === 0) return { grams: next, mixedTo };
    const mixed = mixedTo + (off.salinity - brought) / this.exchanged;
    const inReach = Math.max(MIXED.least, Math.min(MIXED.most, mixed));
    return { grams: next, mixedTo: toDecimals(inReach, 1) };
  }
}
