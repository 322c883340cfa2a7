export const en = {
  title: 'Scenarios and files',
  besideYours:
    'An example stands by itself until you have changed something or logged a reading. From then on whatever you open stands beside yours, as one more trial.',
  picturePng: 'Picture to share',
  pictureSvg: 'The same as SVG',
  openFile: 'Open a scenario file',
  saveFile: (name: string) => `Save ${name} as a file`,
  hourlyCsv: 'Hourly numbers as CSV',
  notOpened: (file: string) => `${file} was not opened; the bench is as it was.`,
  notRead: (file: string, why: string) => `${file} could not be read: ${why}`,
  link: {
    copy: 'Copy link',
    copied: (count: string) =>
      `A link with all ${count} plans is copied. It carries them in itself; nothing is sent anywhere.`,
    cannotCopy: 'This browser does not let a page copy. Copy the address yourself:',
    address: 'Link with these plans',
    title: 'A plan somebody sent you',
    reading: 'Reading the link…',
    notOpened: 'The link was not opened; your bench is as it was.',
    toTheBench: 'To the bench',
    holds: (count: string) =>
      `It holds ${count === '1' ? 'one plan' : `${count} plans`}. You are only looking: nothing of yours has changed.`,
    couldNotRun: (why: string) => `could not be run: ${why}`,
    add: (count: string) => `Add ${count === '1' ? 'this trial' : `${count} trials`} to my bench`,
    leave: 'Leave it, and go to my bench',
    noRoom: (held: string, most: string) =>
      `Your bench holds ${held} of ${most} trials: remove one there first, then open the link again.`,
    someFit: (held: string, most: string, fitting: string) =>
      `Your bench holds ${held} of ${most} trials: only the first ${fitting} of these fit.`,
    undoTakesAway: 'Added trials stand beside yours; Undo takes them away again.',
  },
  everything: {
    title: 'Everything in one file',
    about: 'All tanks with their plans and logs, and how you want things shown.',
    save: 'Save everything',
    open: 'Open such a file',
    notOpened: (file: string) => `${file} was not opened; nothing has changed.`,
    added: (added: string, count: string) =>
      `${added} of ${count} ${count === '1' ? 'tank' : 'tanks'} added; the rest was here already.`,
    unreadable: (got: string, expected: string) =>
      `The file cannot be read: got ${got}; expected ${expected}. Choose one that “Save everything” has made.`,
    tank: (number: string) => `Tank ${number}`,
    andMore: (count: string) => `And ${count} more like these.`,
    notOurs:
      'The file does not hold tanks of Paper Reef. Choose one that “Save everything” has made; a single plan is opened on the bench.',
    otherVersion: (version: string, ours: string) =>
      `The file is of version ${version}; this Paper Reef reads version ${ours}. Update the page and try again.`,
  },
  unread: {
    noTank: 'This is no tank of Paper Reef.',
    noPlans: 'It holds no plan.',
    tooManyPlans: (held: string, most: string) =>
      `It holds ${held} plans where a bench has room for ${most}.`,
    planWithoutName: (number: string) => `Plan ${number}`,
    earlierPlan: (since: string) => `Plan of before${since ? `, since ${since}` : ''}`,
  },
  aside: {
    title: 'Put aside',
    about:
      'What was saved in this browser and could not be read whole, as it was found. What could be read is in your tanks.',
    of: (tank: string, at: string) => [tank || 'Unnamed tank', at].filter(Boolean).join(', '),
    whyUnknown: 'An earlier version put this aside and did not note why.',
    text: 'Its text',
    save: 'Save as a file',
    forget: 'Delete',
    sure: 'This is the only copy.',
    really: 'Delete it for good',
    keep: 'Keep it',
  },
};
