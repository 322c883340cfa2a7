export const en = {
  sentence: (where: string, what: string, got: string, expected: string, wayOut: string) =>
    `${where} (${what}): got ${got}; expected ${expected}. ${wayOut}`,
  named: (name: string, sentence: string) => `${name}: ${sentence}`,
  nothing: 'nothing',
  missing: 'nothing: the field is missing',
  wholeFile: '(the whole file)',
  anotherValue: 'another value',
  range: (least: string, most: string) => `a number from ${least} to ${most}`,
  oneOf: (list: string) => `one of ${list}`,
  kinds: { string: 'string', number: 'number', Object: 'Object', Array: 'Array' },
  field: {
    give: 'Give the number for your tank.',
    leaveOut: (usual: string) => `Leave it out for the usual ${usual}.`,
    unknown: 'unknown field',
    didYouMean: (name: string) => `Did you mean '${name}'?`,
    didYouMeanIn: (name: string, unit: string) => `Did you mean '${name}', a number in ${unit}?`,
    removeOrCorrect: 'Remove it, or correct its name.',
    plainNumber: (unit: string) =>
      `A file holds plain numbers with a decimal point: convert to ${unit} and drop the quotes.`,
    aNumber: 'a number',
    add: 'Add it.',
    change: 'Change it to what is expected.',
  },
  file: {
    scenario: 'scenario file',
    version: 'version of the format',
    versions: (last: string) => `a whole number from 1 to ${last}`,
    newer: 'The file comes from a newer Paper Reef: update this one to open it.',
    neverWritten: 'This version was never written; save the file again from Paper Reef.',
    kind: 'kind of file',
    chooseOurs: 'Choose a scenario file that Paper Reef wrote.',
    characters: (count: string) => `${count} characters`,
    atMost: (count: string) => `at most ${count}`,
    tooLong: 'This is too long for a scenario; check that it is the right file.',
    unreadable: 'something unreadable',
    json: 'a JSON text',
    mendJson:
      'JSON knows no NaN, no comments and no decimal comma; mend it where the message points.',
  },
  together: {
    yourLimits: (quantity: string) => `Your limits for ${quantity}`,
    lowToHigh: (low: string, high: string) => `${low} to ${high}`,
    lowBelowHigh: 'the low one below the high one',
    swap: 'Swap them.',
    moment: (day: string, hour: string) => `day ${day} at ${hour} h`,
    withinTrial: (days: string, hour: string) =>
      `a moment within the trial, which runs ${days} days from ${hour} h`,
    moveAddition: 'Move the addition, or make the trial longer.',
    move: 'Move it, or make the trial longer.',
    ofThePumps: (count: string) => `one of the plan’s ${count} dosing pumps`,
    addPump: 'Add the pump to the plan, or choose another fault.',
    fifth: (most: string) => `at most a fifth of the tank, ${most} L`,
    betweenLevels: 'Give the volume between the two switching levels.',
    withoutTopOff: 'Evaporation without any top-off',
    lostIn: (litres: string, days: string) => `${litres} L in ${days} days`,
    half: (most: string) => `at most half the tank, ${most} L`,
    giveTopOff: 'Give the tank a top-off reservoir, or shorten the trial.',
  },
  typed: {
    nothing: 'Nothing is typed here. Type a number.',
    nothingIn: (unit: string) => `Nothing is typed here. Type a number in ${unit}.`,
    noNumber: (typed: string) =>
      `“${typed}” is not a number. Type one like 8.5 or 8,5, with a unit if you like.`,
    noNumberIn: (typed: string, unit: string) =>
      `“${typed}” is not a number in ${unit}. Type one like 8.5 or 8,5, with a unit if you like.`,
    ambiguous: (typed: string, small: string, large: string) =>
      `“${typed}” can be ${small} or ${large}. Type ${small} or ${large}.`,
    otherUnit: (typed: string, unit: string) =>
      `“${typed}” cannot be turned into ${unit}. Type the number in ${unit}, or another unit of that kind.`,
    unitWhereNone: (typed: string) =>
      `“${typed}” cannot be turned into a plain number. Type the number in no unit, or another unit of that kind.`,
  },
  expression: {
    what: 'expression of time',
    wrongAt: (typed: string, character: string) => `“${typed}”, wrong at character ${character}`,
    expected: 'a factor between 0 and 100 at every hour',
    allowed: (functions: string) =>
      `Numbers, + − * / ^, comparisons, day, hour, t, pi, e and ${functions} may be used.`,
    onlyNumbers: 'Only numbers may stand here.',
    notThisKind: 'This kind of expression is not allowed here.',
    unknown: (name: string) => `“${name}” is not known here.`,
    notUsed: (operator: string) => `“${operator}” may not be used here.`,
    numbersOf: (name: string, wanted: string, got: string) =>
      `“${name}” takes ${wanted} numbers; it was given ${got}.`,
    notCalled: (name: string) => `“${name}” may not be called here.`,
    tooLong: 'This is too long; make it shorter.',
    unreadable: 'This cannot be read from here on.',
    nothing: 'Nothing is typed here. Type 1 for no change.',
    outOfRange: (day: string, hour: string, value: string, most: string) =>
      `On day ${day}, hour ${hour}, this comes to ${value}; expected 0 to ${most}.`,
  },
  link: {
    tooLong: (length: string, most: string) =>
      `These plans make a link of ${length} characters, and beyond ${most} many programs cut it. Save them as files instead, or remove a trial.`,
    damaged:
      'This link is damaged: a part is missing or was changed on the way. Ask for it again, whole, or for the plan as a file.',
    noPlans: (most: string) =>
      `This link holds something other than plans: expected 1 to ${most} plans, each with a name and a scenario. Ask for it again, from Paper Reef.`,
    longer: (length: string, most: string) =>
      `This link is ${length} characters long; expected at most ${most}. Ask for the plan as a file.`,
    newer: (version: string, own: string) =>
      `This link is of version ${version}; this Paper Reef reads version ${own}. Update Paper Reef to open it.`,
    unfoldsTooLong: (most: string) =>
      `This link unfolds to more than ${most} bytes, which no plan needs; it was not opened.`,
  },
};
