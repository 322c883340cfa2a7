import * as v from 'valibot';

const KEY = 'paper-reef preferences';

const oneOf = <const Options extends readonly [string, ...string[]]>(...options: Options) =>
  v.fallback(v.picklist(options), options[0] as Options[number]);

/** How this reader wants things shown; the first of each is the usual one. */
const preferencesSchema = v.object({
  theme: oneOf('auto', 'light', 'dark'),
  alkalinity: oneOf('dKH', 'meq/L', 'mg/L CaCO₃'),
  volume: oneOf('L', 'US gal'),
  temperature: oneOf('°C', '°F'),
  salinity: oneOf('ppt', 'SG'),
  decimal: oneOf('point', 'comma'),
});

export type Preferences = v.InferOutput<typeof preferencesSchema>;

/** What was chosen before; anything unreadable falls back to the usual, field by field. */
function remembered(): Preferences {
  let saved: unknown = {};
  try {
    saved = JSON.parse(localStorage.getItem(KEY) ?? '{}');
  } catch {
    // Storage refused, or not ours: the usual choices hold.
  }
  return v.parse(preferencesSchema, typeof saved === 'object' && saved ? saved : {});
}

class PreferencesHeld {
  private held: Preferences = $state.raw(remembered());

  get now(): Preferences {
    return this.held;
  }

  /** Choices from a file; what cannot be read falls back to the usual, field by field. */
  chooseAny(choices: unknown): void {
    const readable = typeof choices === 'object' && choices !== null ? choices : {};
    this.choose(v.parse(preferencesSchema, { ...this.held, ...readable }));
  }

  choose(change: Partial<Preferences>): void {
    this.held = { ...this.held, ...change };
    try {
      localStorage.setItem(KEY, JSON.stringify(this.held));
    } catch {
      // Storage refused or full: the choice holds until the page is closed.
    }
  }
}

export const preferences = new PreferencesHeld();
