/** May be moved in a day, mg/L and ppt: common practice, each the keeper's to change. */
export interface MostPerDay {
  readonly calcium: number;
  readonly magnesium: number;
  readonly salinity: number;
}
export const usualMostPerDay: MostPerDay = { calcium: 20, magnesium: 50, salinity: 1 };
