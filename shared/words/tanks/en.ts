const days = (count: number) => (count === 1 ? 'a day' : `${count} days`);

export const en = {
  title: 'All tanks',
  how: 'The tank that wants to be looked at soonest stands first. “May leave” is the day by which there is one chance in ten that it has left its own limits.',
  all: (count: number) => `All ${count} tanks`,
  stamps: {
    working: 'being read …',
    outside: 'outside now',
    otherOutside: (names: string) => `${names} outside`,
    mayHaveLeft: 'may have left: test',
    leavesToday: 'may leave today',
    leaves: (count: number) => `may leave in ${days(count)}`,
    due: 'test due',
    stays: 'inside for four weeks',
    unknown: 'not known yet',
  },
  stands: (level: string, use: string, by: string) =>
    `${level} dKH by now; uses ${use} ± ${by} dKH a day.`,
  /** Where its readings tell no use. */
  standsAt: (level: string) => `${level} dKH by now; its readings do not tell what it uses.`,
  test: (date: string) => `Test next by ${date}.`,
  testDue: (date: string) => `A test was due by ${date}: test now.`,
  noReading: 'No reading yet.',
  open: 'Open its log',
  month: 'One month, all tanks',
  monthOf: (count: number, from: string, to: string) =>
    `Alkalinity of ${count} tanks, from ${from} to ${to}: as fitted, then as forecast.`,
};
