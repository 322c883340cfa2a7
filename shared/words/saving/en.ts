export const en = {
  failed: 'Nothing could be saved in this browser. Save your plan and your log as files instead.',
  setAside:
    'Some of what was saved here could not be read. It was put aside as it was found: see “Put aside” on the page Display.',
  newerHere:
    'A newer Paper Reef keeps the tanks of this browser now: what is changed in this window is not kept. Reload it to go on in the newer one.',
  keepsNothing:
    'This browser keeps nothing between visits here. Save your plan and your log as files instead.',
  otherWindow: (tank: string) =>
    `Another window changed the same plans: they are kept as the tank “${tank}”.`,
  otherWindowTank: (tank: string) => `${tank}, other window`,
  removedElsewhere: (tank: string) => `“${tank}” was removed in another window.`,
  removedAside: (tank: string) =>
    `Another window had written into “${tank}” since: it was put aside as it was, see “Put aside” on the page Display.`,
  unnamedTank: 'Unnamed tank',
};
