import type { DeskWindow } from './deskWindow';
import { pressed, shownIn } from './onPage';

const UNDO = 'section[aria-labelledby=readings-title] .undo button:nth-child(1)';
const REDO = 'section[aria-labelledby=readings-title] .undo button:nth-child(2)';
/** A busy machine is no failure. */
const PATIENCE = { timeout: 30_000 };

async function type(desk: DeskWindow, prefix: string, name: string): Promise<void> {
  const dkh = `${(desk.chance.int(60, 110) / 10).toFixed(1)} dKH`;
  await desk.page.locator(`#${prefix}-notes`).waitFor({ state: 'attached', ...PATIENCE });
  await desk.page.evaluate(
    (id) => (document.getElementById(id)!.closest('details')!.open = true),
    `${prefix}-notes`,
  );
  await desk.page.fill(`#${prefix}-notes`, name, PATIENCE);
  await desk.page.fill(`#${prefix}-alkalinityDkh`, dkh, PATIENCE);
  await desk.page.press(`#${prefix}-alkalinityDkh`, 'Enter', PATIENCE);
}

async function seen(desk: DeskWindow, name: string): Promise<boolean> {
  for (let i = 0; i < 80; i++) {
    if ((await shownIn(desk.page)).names.includes(name)) return true;
    await desk.page.waitForTimeout(25);
  }
  return false;
}

export async function add(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  const name = desk.named();
  await type(desk, 'new', name);
  // Another window may be quicker to change it than this one to look: then it is in its journal.
  if (!(await seen(desk, name))) desk.note(`did not see ${name}`);
  desk.note(`added ${name} to ${(await shownIn(desk.page)).tank}`);
  desk.touched.add(name);
  desk.oracle.wrote(name);
}

export async function deleteOne(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  const { names } = await shownIn(desk.page);
  if (names.length === 0) return;
  const row = desk.chance.int(1, Math.min(names.length, 12));
  const came = await pressed(desk.page, `tbody tr:nth-child(${row}) .change button:nth-child(2)`);
  if (!came) return;
  const [before, after] = came;
  const lost = before.names.filter((name) => !after.names.includes(name));
  desk.note(`deleted ${lost.join()} from ${after.tank}`);
  if (lost.length > 1) desk.oracle.fail(`one press deleted ${lost.join()}`);
  for (const name of lost) {
    desk.touched.add(name);
    desk.oracle.deleted(name);
  }
}

export async function edit(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  const { names } = await shownIn(desk.page);
  if (names.length === 0) return;
  const row = desk.chance.int(1, Math.min(names.length, 6));
  const old = names[row - 1]!;
  await pressed(desk.page, `tbody tr:nth-child(${row}) .change button:nth-child(1)`);
  const form = desk.page.locator('#edit-notes');
  if (!(await form.isVisible())) return;
  // Another window's save may have put another reading into the row in the meantime.
  const begun = await form.inputValue();
  if (begun !== old) return;
  const name = desk.named();
  await type(desk, 'edit', name).catch(() => {
    throw new Error(`the form for ${old} went away while it was typed into`);
  });
  // Its line may have gone under the last key, with all that was typed kept in a form above the table.
  if (await form.isVisible()) await desk.page.press('#edit-alkalinityDkh', 'Enter').catch(() => {});
  if (!(await seen(desk, name)) && (await form.isVisible())) {
    return desk.oracle.fail(`${old} was changed into ${name}, which is not taken`);
  }
  desk.note(`edited ${old} into ${name}`);
  desk.touched.add(old).add(name);
  desk.oracle.edited(desk.who, old, name);
}

export async function walk(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  const what = desk.chance.percent(70) ? UNDO : REDO;
  const came = await pressed(desk.page, what);
  if (!came) return;
  desk.note(
    `${what === UNDO ? 'undo' : 'redo'}: ${came.map(({ names }) => names.length).join(' → ')}`,
  );
  desk.oracle.stepped(what === UNDO ? 'undo' : 'redo', ...came, desk.touched);
}
