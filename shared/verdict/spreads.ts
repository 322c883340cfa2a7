/** What a keeper does not know exactly, and how far it may be off. */
export interface SpreadKind {
  readonly id: SpreadId;
  readonly unit: string;
  /** One standard deviation (for the hour: the largest shift either way); common practice. */
  readonly usual: number;
  readonly max: number;
}

export type SpreadId =
  | 'volume'
  | 'kLa'
  | 'pump'
  | 'strength'
  | 'roomCo2'
  | 'alkalinity'
  | 'startPh'
  | 'hour'
  | 'respiration';

const kind = (id: SpreadId, unit: string, usual: number, max: number): SpreadKind => ({
  ...{ id, unit, usual, max },
});

export const spreadKinds: readonly SpreadKind[] = [
  kind('volume', '%', 5, 30),
  kind('kLa', '%', 35, 100),
  kind('pump', '%', 10, 50),
  kind('strength', '%', 5, 50),
  kind('roomCo2', '%', 15, 60),
  kind('alkalinity', 'dKH', 0.3, 2),
  kind('startPh', 'pH', 0.1, 0.3),
  kind('hour', 'h', 12, 12),
  // Last, so that the draws of the others stay what they were.
  kind('respiration', '%', 50, 100),
];

export type Spreads = Readonly<Record<SpreadId, number>>;

/** An ensemble of more tanks tells nothing new, and takes minutes. */
export const MOST_MEMBERS = 5000;

export const usualSpreads = Object.fromEntries(
  spreadKinds.map(({ id, usual }) => [id, usual]),
) as Spreads;
