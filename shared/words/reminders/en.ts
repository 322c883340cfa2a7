export const en = {
  take: 'Into my calendar',
  file: (tank: string) => `${tank}: next test`,
  test: (tank: string) => `Test alkalinity: ${tank}`,
  testWhy:
    'At the same hour as the last one, and before anything is dosed. The log says why on that day.',
  refill: (tank: string) => `Fill the top-off: ${tank}`,
  refillWhy: (litres: string, days: number) =>
    `${litres} L, every ${days === 1 ? 'day' : `${days} days`} as the plan has it, counted from the day on which this was taken from the log. Never stir it while its pump can run.`,
};
