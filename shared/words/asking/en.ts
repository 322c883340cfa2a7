export const en = {
  notFetched: 'what works it out could not be fetched. Reload the page to try again.',
  tooLong: (seconds: string) =>
    `nothing was heard of it for ${seconds} seconds, and it was stopped. Ask again, or set less to be worked out.`,
  broken: (why: string) => `what works it out broke off (${why}). Reload the page to try again.`,
};
