export const en = {
  judged: {
    sentence: (dkh: string, expected: string, by: string, judgement: string) =>
      `${dkh} where ${expected} ± ${by} was expected: ${judgement}.`,
    withinNoise: 'within noise',
    lower: 'lower than noise usually makes it: test again',
    higher: 'higher than noise usually makes it: test again',
    farBelow: 'far below what noise explains: test again before you act',
    farAbove: 'far above what noise explains: test again before you act',
  },
  monthOf: 'Show on the month',
  places: {
    label: 'Parts of the log',
    lines: 'The log',
    plan: 'Plans',
    away: 'Away',
    season: 'Season',
    stock: 'Stock',
    read: 'How it is read',
  },
  enter: {
    title: 'A new reading',
    add: 'Add to the log',
    leave: 'Leave it',
    more: 'Another time, other readings, a dose, a water change',
    timeIsNow: 'Left empty, the time is now.',
    several: 'Several at once?',
    pasteThem: 'Paste several lines',
    knownAlready: 'The log has just this line already; nothing was added.',
    taken: (time: string) => `Taken, ${time}.`,
    onlyDigits: 'digits and one decimal mark',
    lotAlone:
      'A bottle alone is no line of the log: its lot goes with the next alkalinity reading, so type that beside it.',
    nothingTyped: 'Nothing is typed yet: give a reading, a dose, a water change or a note.',
    equipmentAlone: 'Say what was done to it: bought, cleaned, replaced, calibrated, filled.',
    halfADose: 'A dose needs both: what was poured in, and how many grams.',
    nothingPoured: 'nothing',
    unitOf: (field: string) => `Unit of ${field}`,
  },
  settingHelp: {
    withinDkhPerDay: 'At two standard errors: nineteen times in twenty.',
    scoopG: '0: weigh everything. Powders differ: weigh ten scoops of yours.',
    pumpMlPerMin: '0: set the pump in mL a day.',
  },
  help: {
    at: 'The clock beside the tank, without time zone.',
    phNbs: 'As the probe reads (NBS). Before lights-on and before lights-off tell most.',
    accuracyDkh: (dkh: string) =>
      `Left out: ${dkh} dKH (common practice 0.1–0.2). Test the same water five times; two thirds of the results lie within one σ.`,
    phosphate:
      'As the kit shows it: PO₄, or phosphorus (PO₄-P), a third of it; “30 ppb” is 0.03 mg/L. Where the kit shows nothing, type 0.',
    equipment: 'Skimmer, pump, lamp; for “bottle filled” the pump’s name, empty: all bottles.',
    coralsPercent:
      'Of all that take alkalinity, by size as you judge it: −33 when a third was sold, 20 when a fifth more came in. It counts from this moment on, and the readings that follow put it right.',
  },
  counted: {
    future: (count: number, when: string) =>
      count === 1
        ? `The reading of ${when} lies in the future and is not counted: put its date right below.`
        : `${count} readings lie in the future, the last on ${when}, and are not counted: put their dates right below.`,
    tooOld: (count: number) =>
      `${count === 1 ? 'One line is' : `${count} lines are`} not counted: the fit looks back two years at most.`,
    tooMany: (count: number) =>
      `${count === 1 ? 'One line is' : `${count} lines are`} not counted: at most 20 of one minute and 2,000 altogether are, the newest.`,
  },
  against: {
    plan: (dosing: string) => `Read against today’s plan: ${dosing}.`,
    workedOut: 'What the corals take is worked out from that:',
    putRight: 'put it right on the bench',
    ifOtherwise: 'if your tank runs otherwise.',
  },
  lines: {
    undo: 'Undo',
    redo: 'Redo',
    empty: 'Nothing yet. Type today’s alkalinity above.',
    region: 'Readings, latest first',
    offTheFit: 'σ off the fit',
    whatElse: 'What else',
    change: 'Change',
    outlier: 'outlier',
    edit: 'Edit',
    editAt: (time: string) => `Edit ${time}`,
    delete: 'Delete',
    deleteAt: (time: string) => `Delete ${time}`,
    keep: 'Keep the change',
    onlyLatest: 'Only the latest',
    all: (count: number) => `All ${count} lines`,
  },
  events: {
    bought: 'bought',
    cleaned: 'cleaned',
    replaced: 'replaced',
    calibrated: 'probe calibrated',
    reservoirFilled: 'reservoir filled',
    bottleFilled: 'bottle filled',
  },
  marks: {
    event: (what: string, done: string) => (what === '' ? done : `${what}: ${done}`),
    poured: (grams: string, additive: string) => `${grams} g ${additive}`,
    water: (percent: string) => `${percent} % new water`,
    corals: (percent: string) => `corals ${percent} %`,
    bottle: (lot: string) => (lot === '' ? 'another bottle' : `bottle ${lot}`),
    turned: 'turned',
  },
  tanks: {
    tank: 'Tank',
    rename: 'Rename',
    another: 'Another tank',
    remove: 'Remove this tank',
    nameOfNew: 'Name of the new tank',
    itsName: 'Its name',
    begin: 'Begin its log',
    keepName: 'Keep the name',
    leave: 'Leave it',
    unnamed: (number: number) => `Tank ${number}`,
    copyOfToday: 'It begins with a copy of today’s plan; set its own volume on the bench.',
    sure: (name: string, count: number) =>
      `Remove ${name} with its ${count} readings and its plans? You can bring it back until this page is closed or loaded anew.`,
    yes: 'Yes, remove it',
    no: 'Keep it',
    removed: (name: string) => `${name} was removed.`,
    bringBack: 'Bring it back',
  },
};
