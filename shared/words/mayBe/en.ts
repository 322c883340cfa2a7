export const en = {
  between: (low: string, high: string, day: number) =>
    `9 of 10 such tanks: ${low}–${high}, day ${day}`,
  leave: (percent: string, low: string, high: string) => `about ${percent} % leave ${low}–${high}`,
  /** Where the wash comes from, under what the trial says. */
  why: 'The faint wash: where nine of ten tanks are that run by this plan, with use right to a fifth, net volume to a fifth, evaporation to two fifths, pumps to a fifth, limewater to three tenths, gas exchange to a factor of four (common practice, two standard deviations), each by itself to either side through the engine, and added in squares. Readings in the log make it narrower there.',
};
