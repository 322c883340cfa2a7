/** A word of the trade or of this page, and its sentence. */
interface Term {
  readonly term: string;
  readonly sentence: string;
}

const term = (name: string, sentence: string): Term => ({ term: name, sentence });

export const terms: readonly Term[] = [
  term(
    'Alkalinity',
    'What the water can still take up of acid; growing corals use it up, and it is the number to watch.',
  ),
  term(
    'Ω (saturation)',
    'How far above its solubility aragonite stands: corals build above 1, and chalk may fall out by itself from about 10 on.',
  ),
  term(
    'Brucite',
    'Magnesium hydroxide, which may fall out of very alkaline water; it is left out here.',
  ),
  term(
    'Carbonate and bicarbonate',
    'The two forms in which the water holds most of its carbon and its alkalinity.',
  ),
  term(
    'Common practice',
    'What many keepers do, without a source that was measured; every such number can be changed.',
  ),
  term('Dead band', 'How far the level falls before the top-off pump starts.'),
  term('DIC', 'Dissolved inorganic carbon: carbon dioxide, bicarbonate and carbonate together.'),
  term(
    'dKH',
    'German degrees of carbonate hardness: a unit of alkalinity, of which one is 0.357 milliequivalents a litre.',
  ),
  term('Dose card', 'One printed page for the tank: what to mix, dose and test, and when to stop.'),
  term(
    'Drill',
    'A failure rehearsed on paper: what breaks, when it becomes dangerous, what keeps it from getting there.',
  ),
  term('Dump', 'The whole reservoir going into the tank at once.'),
  term('Fit', 'The simulated tank matched to the test log.'),
  term('Forecast', 'What the fitted tank does next, with how far it may be off.'),
  term(
    'kLa',
    'How fast water and air exchange gas, in parts an hour: about 0.5 for a still surface, 2 and more with overflow and skimmer (common practice).',
  ),
  term('Ledger', 'Where alkalinity came from and where it went, booked by the engine as it goes.'),
  term('Lesson', 'A guided experiment with a prediction, one thing to move, a question and a why.'),
  term(
    'Limewater',
    'Calcium hydroxide dissolved in fresh water: calcium and alkalinity at once, very alkaline.',
  ),
  term(
    'Media reactor',
    'A column of coral gravel that dissolves in water made acid with carbon dioxide.',
  ),
  term(
    'pH (NBS)',
    'How acid or alkaline the water is, on the scale that hobby probes are set to; a real probe is within about 0.1.',
  ),
  term(
    'Photosynthesis',
    'Light takes carbon dioxide out of the water by day, so pH rises; by night it comes back.',
  ),
  term('Practical salinity', 'The salt in the water, close to grams in a kilogram.'),
  term(
    'Rank correlation',
    'Between −1 and 1: how far the order of one thing follows the order of another.',
  ),
  term('Reservoir', 'The vessel that the top-off pump draws from.'),
  term(
    'Residual',
    'How far a reading lies from what the fitted tank says, in standard deviations.',
  ),
  term(
    'Salt mix',
    'The dry salt for new water; here it is the dKH, calcium and magnesium at a stated salinity.',
  ),
  term('Scenario', 'A plan as a file, with a title, a question and the answer it should give.'),
  term(
    'Settled daily cycle',
    'A trial begins on a day that ends as it began, so that the first days show no start-up drift.',
  ),
  term(
    'Standard error',
    'How far an estimate may well be off; twice of it holds nineteen times in twenty.',
  ),
  term('Sump', 'The vessel below the tank; when it is full, water runs onto the floor.'),
  term('Tank', 'Your real one: its plans are on the bench, its readings in the log.'),
  term(
    'Today’s plan',
    'The trial that stands for the real tank as it runs now; the log is read against it.',
  ),
  term('Top-off', 'Puts back as fresh water what evaporates, by level sensor and pump.'),
  term('Trial', 'One simulated run of a plan.'),
  term('Two-part', 'A carbonate and a calcium solution, dosed side by side in equal parts.'),
  term('Un-ionised ammonia', 'The part of ammonia that harms fish; it grows with pH.'),
  term('Verdict', 'What a trial says against your limits, in a sentence.'),
  term('Wash', 'The pale band in a chart: your limits, or where most of the possible tanks lie.'),
].toSorted((a, b) => a.term.localeCompare(b.term, 'en'));
