import * as v from 'valibot';
import { languages, PREFERENCES_KEY } from '../../shared/words/language';
import { writeDecimal } from '../../shared/words/figure';
import { writing } from '../../shared/words/writing';

const oneOf = <const Options extends readonly [string, ...string[]]>(...options: Options) =>
  v.fallback(v.picklist(options), options[0] as Options[number]);

/** How this reader wants things shown; the first of each is the usual one. */
const preferencesSchema = v.object({
  language: oneOf('browser', ...languages),
  theme: oneOf('auto', 'light', 'dark'),
  alkalinity: oneOf('dKH', 'meq/L', 'mg/L CaCO₃'),
  volume: oneOf('L', 'US gal'),
  temperature: oneOf('°C', '°F'),
  salinity: oneOf('ppt', 'SG'),
  /** In which unit each field of a reading is typed, where it was chosen beside the field. */
  readIn: v.fallback(v.record(v.string(), v.string()), {}),
  decimal: writing.decimal === ',' ? oneOf('comma', 'point') : oneOf('point', 'comma'),
});

export type Preferences = v.InferOutput<typeof preferencesSchema>;

/** What was chosen before, as it was saved. */
function remembered(): object {
  try {
    return objectIn(JSON.parse(localStorage.getItem(PREFERENCES_KEY) ?? '{}'));
  } catch {
    // Storage refused, or not ours: the usual choices hold.
    return {};
  }
}

const objectIn = (value: unknown): object =>
  typeof value === 'object' && value !== null ? value : {};

class PreferencesHeld {
  /** Only what the reader chose: all else follows the usual, which may be another's tomorrow. */
  private chosen: object = $state.raw(remembered());
  /** Anything unreadable falls back to the usual, field by field. */
  private readonly held = $derived(v.parse(preferencesSchema, this.chosen));

  constructor() {
    writeDecimal(this.held.decimal);
  }

  get now(): Preferences {
    return this.held;
  }

  /** Choices from a file. */
  chooseAny(choices: unknown): void {
    this.choose(objectIn(choices));
  }

  choose(change: Partial<Preferences>): void {
    this.chosen = { ...this.chosen, ...change };
    // Sentences and charts write numbers alike.
    writeDecimal(this.held.decimal);
    try {
      localStorage.setItem(PREFERENCES_KEY, JSON.stringify(this.chosen));
    } catch {
      // Storage refused or full: the choice holds until the page is closed.
    }
  }
}

export const preferences = new PreferencesHeld();
