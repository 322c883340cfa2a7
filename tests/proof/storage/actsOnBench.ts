import type { DeskWindow } from './deskWindow';
import { LEVERS, turnedBy } from './onPage';

const UNDO = '.levers > .undo button:nth-child(1)';
/** A busy machine is no failure. */
const PATIENCE = { timeout: 30_000 };

export async function turn(desk: DeskWindow): Promise<void> {
  await desk.hasRead();
  await desk.goTo('bench');
  const lever = desk.chance.pick(LEVERS);
  const value = (0.5 + desk.chance.int(1, 90_000) / 100_000).toFixed(5);
  await desk.page.fill(`#field-${lever}`, value, PATIENCE);
  await desk.page.press(`#field-${lever}`, 'Enter', PATIENCE);
  // Once it is taken, it is written with fewer digits.
  const isTaken = (shown: string) =>
    shown !== value && Math.abs(Number(shown.replace(',', '.')) - Number(value)) < 0.006;
  let shown = value;
  for (let i = 0; i < 100 && shown === value; i++) {
    await desk.page.waitForTimeout(desk.chance.int(10, 60));
    shown = await desk.page.inputValue(`#field-${lever}`);
  }
  const tank = await desk.page.evaluate(() => (globalThis as { openTank?: string }).openTank);
  desk.turned.add(lever);
  desk.note(`turned ${lever} of ${tank} to ${value}, and ${shown} is shown`);
  if (isTaken(shown)) desk.oracle.turns.set(`${tank} ${lever}`, value);
  // Another window has turned the same in the same breath, or it found no room to be tried in, or it
  // is still being read: nobody knows what it comes to.
  else desk.oracle.turns.delete(`${tank} ${lever}`);
}

export async function undoTurn(desk: DeskWindow): Promise<void> {
  await desk.hasRead();
  await desk.goTo('bench');
  const levers = await turnedBy(desk.page, UNDO);
  if (!levers) return;
  desk.note(`undo on the bench: ${levers.join()}`);
  const others = levers.filter((lever) => !desk.turned.has(lever));
  if (others.length > 0)
    desk.oracle.fail(`undo turned ${others.join()}, which only another window had turned`);
  desk.oracle.forgetTurns();
}
