import type { Scenario } from '../../../shared/scenario/schema';

/** A typed number that no reading can check, and how far such numbers are commonly off. */
export interface Doubt {
  readonly id: 'volume' | 'evaporation' | 'limewater' | 'delivery';
  /** Share, one σ: common practice. */
  readonly sigma: number;
  /** The tank if it were more by that share. */
  readonly more: (scenario: Scenario, share: number) => Scenario;
}

export const volume: Doubt = {
  id: 'volume',
  sigma: 0.1,
  more: ({ tank, ...rest }, share) => ({
    ...rest,
    tank: { ...tank, volumeL: tank.volumeL * (1 + share) },
  }),
};

export const evaporation: Doubt = {
  id: 'evaporation',
  sigma: 0.2,
  more: ({ evaporation: { litresPerDay, surfaceM2, ...other }, ...rest }, share) => ({
    ...rest,
    evaporation: {
      ...other,
      litresPerDay: litresPerDay * (1 + share),
      surfaceM2: surfaceM2 * (1 + share),
    },
  }),
};

export const limewater: Doubt = {
  id: 'limewater',
  sigma: 0.15,
  more: ({ topOff, ...rest }, share) => ({
    ...rest,
    topOff: {
      ...topOff,
      gramsPerL: topOff.gramsPerL * (1 + share),
      saturationPercent: topOff.saturationPercent * (1 + share),
    },
  }),
};

export const delivery: Doubt = {
  id: 'delivery',
  sigma: 0.1,
  more: ({ dosers, ...rest }, share) => ({
    ...rest,
    dosers: dosers.map((doser) => ({ ...doser, mlPerDay: doser.mlPerDay * (1 + share) })),
  }),
};

/** The doubts that matter to this tank's dosing. */
export function doubtsOf({ topOff, dosers }: Scenario, anythingPoured: boolean): Doubt[] {
  const topped = topOff.reservoirL > 0 && topOff.additive !== 'none' && topOff.gramsPerL > 0;
  const pumped = dosers.some(({ mlPerDay }) => mlPerDay > 0);
  return [
    ...(topped || pumped || anythingPoured ? [volume] : []),
    ...(topped ? [evaporation] : []),
    ...(topped && topOff.additive === 'calciumHydroxide' ? [limewater] : []),
    ...(pumped ? [delivery] : []),
  ];
}
