/** The days of a week as files name them; a trial starts on the first. */
export const weekdayNames = ['Mo', 'Tu', 'We', 'Th', 'Fr', 'Sa', 'Su'] as const;
