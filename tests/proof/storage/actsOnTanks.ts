import type { DeskWindow } from './deskWindow';
import { pressed, shownIn } from './onPage';

/** As many as fit into a list that anyone keeps. */
const MOST_TANKS = 6;
/** A busy machine is no failure. */
const PATIENCE = { timeout: 30_000 };

export async function addTank(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  if ((await desk.page.locator('#tank option').count()) > MOST_TANKS) return;
  await pressed(desk.page, '.tank .bar button:nth-of-type(2)');
  await desk.page.fill('#tank-name', `bath ${desk.named()}`, PATIENCE);
  await desk.page.press('#tank-name', 'Enter');
  await desk.opened();
  desk.note(`added a tank: ${(await shownIn(desk.page)).tank}`);
}

export async function removeTank(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  if (!(await pressed(desk.page, '.tank .bar button:nth-of-type(3)'))) return;
  const came = await pressed(desk.page, '.tank p[role=alert] button:nth-of-type(1)');
  if (!came) return;
  desk.note(`removed ${came[0].tank} with ${came[0].names.join()}`);
  desk.oracle.removedTank(came[0]);
  await desk.opened();
  if (!desk.chance.percent(50)) return;
  await desk.page.waitForTimeout(desk.chance.int(0, 600));
  const back = await pressed(desk.page, '.tank p[role=status] button');
  if (!back) {
    // Another window has written into it meanwhile: it is there again by itself.
    const isThere = await desk.page.locator(`#tank option[value="${came[0].tank}"]`).count();
    if (isThere === 0) desk.oracle.fail('a removed tank could not be brought back');
    return;
  }
  desk.note(`brought back ${back[1].tank} with ${back[1].names.join()}`);
  for (const name of back[1].names) desk.oracle.back(name);
  await desk.opened();
}

export async function rename(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  await pressed(desk.page, '.tank .bar button:nth-of-type(1)');
  await desk.page.fill('#tank-name', `hall ${desk.named()}`, PATIENCE);
  await desk.page.press('#tank-name', 'Enter');
  desk.note('renamed');
}

export async function otherTank(desk: DeskWindow): Promise<void> {
  await desk.goTo('log');
  const ids = await desk.page
    .locator('#tank option')
    .evaluateAll((all) => all.map((one) => (one as HTMLOptionElement).value));
  const id = desk.chance.pick(ids);
  // Another window may have removed it just now.
  const came = await desk.page.selectOption('#tank', id, { timeout: 2_000 }).catch(() => undefined);
  if (!came) return;
  desk.note(`opened ${id}`);
  await desk.opened();
}
