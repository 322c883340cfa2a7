export const en = {
  title: 'How sure is one test?',
  about: 'Scatter of a test kit against a slow fall, and how many days it takes to see through it.',
  plan: {
    title: 'A few tests',
    question: 'How many days of testing does it take to know the use?',
  },
  setting:
    'In truth this undosed tank loses {begin.alkalinityFallPerDay}. You cannot see the truth, only tests: one a day at the same hour, {begin.testCount} of them, each scattered by {begin.testScatter} (one standard deviation, a good kit in careful hands).',
  predict: {
    question: 'You draw the best straight line through your tests. How well do you know the fall?',
    choices: {
      well: 'Well: to within a quarter of itself.',
      roughly: 'Roughly: it is surely falling, but how fast is open.',
      not: 'Not at all: no fall, or twice the fall, would fit as well.',
    },
  },
  reveal:
    'The line through these tests falls by {begin.testedFallPerDay}, give or take {begin.testedDoubt}. The truth is {begin.alkalinityFallPerDay}. Another week, another set of tests, another answer.',
  control: {
    title: 'Days of testing',
    invite: 'Move the days of testing.',
    now: '{now.testCount} tests: a fall of {now.testedFallPerDay}, give or take {now.testedDoubt}. The truth is {now.alkalinityFallPerDay}.',
  },
  ask: {
    question: 'After {asked.days} of testing, how much is still in doubt?',
    answer:
      'The doubt has shrunk to {asked.testedDoubt}, where it was {begin.testedDoubt}. More tests help; that they lie farther apart helps more. That is why two tests a fortnight apart say more than three in a row.',
  },
  why: {
    first:
      'Each test scatters around the truth. A slope is a difference of readings divided by the time between them: the scatter stays the same, the time grows, so the doubt shrinks.',
    second:
      'A kit that always reads too high does not spoil the slope, because the error is in every reading. A test at another hour of the day does, for the tank swings by itself.',
  },
  equation: {
    text: 'u(slope) = σ ⁄ √( Σ (t − t̄)² )',
    inWords:
      'The doubt of the slope is the scatter of one test divided by the root of the summed squares of the times from their mean. Give or take means twice that.',
  },
  assumes:
    'Scatter of a test is common practice. The draw of chance is the same at every visit, so that a class sees the same points.',
};
