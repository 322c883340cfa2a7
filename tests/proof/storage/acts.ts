import { turn, undoTurn } from './actsOnBench';
import { add, deleteOne, edit, walk } from './actsOnLog';
import { back, display, reload } from './actsOnPage';
import { addTank, otherTank, removeTank, rename } from './actsOnTanks';
import type { DeskWindow } from './deskWindow';

/** What is done at a desk, and how often of a hundred or so. */
const acts: readonly (readonly [weight: number, act: (desk: DeskWindow) => Promise<void>])[] = [
  [34, add],
  [10, deleteOne],
  [10, edit],
  [10, walk],
  [18, turn],
  [4, undoTurn],
  [3, addTank],
  [1, removeTank],
  [2, rename],
  [2, otherTank],
  [3, display],
  [6, reload],
  [3, back],
];
const all = acts.reduce((sum, [weight]) => sum + weight, 0);

/** One act, drawn; and a look at what the window shows then. */
export async function act(desk: DeskWindow): Promise<void> {
  let drawn = desk.chance.int(1, all);
  for (const [weight, one] of acts) {
    drawn -= weight;
    if (drawn > 0) continue;
    await one(desk);
    break;
  }
  await desk.watch.look();
  for (const fault of desk.watch.faults()) desk.oracle.fail(`window ${desk.who}: ${fault}`);
}
