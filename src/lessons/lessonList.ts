import { calciumHardlyMoves } from './calciumHardlyMoves';
import { dripAndStuckPump } from './dripAndStuckPump';
import type { Lesson } from './lesson';
import { limewaterAir } from './limewaterAir';
import { notPh } from './notPh';
import { oneTest } from './oneTest';
import { smallTank } from './smallTank';
import { waterChanges } from './waterChanges';
import { whyItFalls } from './whyItFalls';

/** Every lesson, in the order in which a class would take them. */
export const lessonList: readonly Lesson[] = [
  whyItFalls,
  notPh,
  calciumHardlyMoves,
  waterChanges,
  limewaterAir,
  dripAndStuckPump,
  oneTest,
  smallTank,
];

export const lessonAt = (id: string): Lesson | undefined =>
  lessonList.find((lesson) => lesson.id === id);
