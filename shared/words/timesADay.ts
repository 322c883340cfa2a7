/** How often in a day, where something comes round in a part of one. */
const timesIn = (days: number): number => Math.round(1 / days);

export const timesADay = (days: number): string =>
  timesIn(days) === 2 ? 'twice a day' : `${timesIn(days)} times a day`;

export const malAmTag = (days: number): string =>
  timesIn(days) === 2 ? 'zweimal am Tag' : `${timesIn(days)}-mal am Tag`;
