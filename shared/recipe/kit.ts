/** What the keeper measures with; 0 where they have none. */
export interface Kit {
  /** What a level scoop of the powder weighs, g. */
  readonly scoopG: number;
  readonly pumpMlPerMin: number;
}
