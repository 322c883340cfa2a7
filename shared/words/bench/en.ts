export const en = {
  undo: 'Undo',
  redo: 'Redo',
  startOver: 'Start over',
  planOf: (name: string) => `The plan of ${name}`,
  everythingElse: 'Everything else in the plan',
  example: {
    title: 'The lagoon of the field school',
    question:
      'Can limewater in the top-off hold it on its own? Drag “Strength of the mix” and watch Trial A.',
  },
  verdict: {
    title: 'Verdict',
    stampInside: 'inside to the end',
    stampOutside: (what: string, day: string) => `${what} outside from day ${day}`,
    stampStops: (day: string) => `stops on day ${day}`,
    why: 'Why, and what else is known',
    beingWorkedOut: 'is being worked out…',
    couldNotRun: (name: string, why: string) => `${name} could not be run as it is set now: ${why}`,
    lastGoodRun: 'What you see is its last good run.',
    shareDone: (name: string) => `${name}: share of the trial done`,
  },
  plans: {
    title: 'Trials on the bench',
    today: "Today's plan",
    trial: (letter: string) => `Trial ${letter}`,
    myTank: 'My tank',
    noRoomToTry: (today: string) =>
      `“${today}” is what your tank runs by: it is not changed by dragging. Pick a trial to try in, or remove one to make room.`,
    unnamed: 'Unnamed trial',
    remove: (name: string) => `Remove ${name}`,
    full: (most: string) => `The bench holds ${most} trials; remove one first.`,
    keep: 'Keep, and try another',
    name: 'Name',
  },
  runsBy: {
    neverSaid: (today: string) =>
      `Log and card go by “${today}”, which you have not called yours yet: set a trial as your tank is, and press “My tank runs by …”.`,
    since: (today: string, when: string) =>
      `Your tank runs by “${today}”, as it stands since ${when}. Trying does not change it.`,
    runsBy: (name: string) => `My tank runs by ${name}`,
    before: (count: number) =>
      count === 1 ? 'One plan before this one' : `${count} plans before this one`,
    ranSince: (when: string) => `From ${when}:`,
    ranFirst: 'At first:',
    asNow: 'as now',
    setting: (title: string, then: string, now: string) => `${title} ${then} (now ${now})`,
    andMore: (count: number) => `and ${count} more`,
    again: 'Run by this again',
    turned: 'The log until then is read by the plan before: what is dosed was changed on that day.',
    readBy: (until: string) => `The log until ${until} is read by it.`,
    neverRanSo: 'It never ran so: the plan was put right',
    putRight: 'The log is not read by it: the plan was put right.',
    ranSo: (until: string) => `It ran so until ${until}`,
  },
  room: {
    none: (title: string) =>
      `“${title}” finds no room on the bench: nothing of yours is replaced. Which trial may go?`,
    remove: (name: string) => `Remove ${name}`,
    leave: 'None, leave it out',
  },
  anotherQuestion: 'Another question came first.',
};
