import { expect, it } from 'vitest';
import { awaySentences } from '../../src/say/away/away';
import { away } from '../../workers/studies/away/away';
import { pair } from './sodaPump';

/** A log without a line. */
const unread = { readings: [], answer: undefined, now: '2026-03-01T18:00' };

it('what lasts only where all of it at once does harm is said to do so first', () => {
  // From 8.4 dKH to 0.3 below 9 there are 0.3, a third of a day's dosing: not even daily visits do.
  const limits = { ...pair.limits, alkalinityHighDkh: 9, calciumLowMgPerL: 300 };
  const now = { ...pair, limits, dosers: [{ ...pair.dosers[0]!, stockL: 2 }] };
  const question = { now, giveOrTakeDkhPerDay: 0.02, days: 5, visitDays: 0 };
  const asked = { question, away: away(question), isRead: true };
  const { headline, beside } = awaySentences(asked, unread);
  expect(asked.away.vessels.map(({ harms }) => harms)).toEqual([false, true]);
  expect(headline).toMatch(
    /^Nothing that lasts is harmless: 550 mL in the bottle of “soda” \(up to 28 mL does none\) does harm/,
  );
  expect(headline).toMatch(
    /It can be left alone for 5 days: leave .+ 550 mL in the bottle of “soda”/,
  );
  expect(beside.join(' ')).toMatch(/No more than 28 mL may stand in the bottle of “soda”/);
});

it('a tank that dries up for want of a top-off is refused with what would do', () => {
  const corals = { ...pair.corals, useDkhPerDay: 0.1 };
  const bare = { ...pair, corals, dosers: [], topOff: { ...pair.topOff, reservoirL: 0 } };
  const question = { now: bare, giveOrTakeDkhPerDay: 0.1, days: 20, visitDays: 0 };
  const asked = { question, away: away(question), isRead: true };
  const { headline, beside } = awaySentences(asked, unread);
  expect(headline).toMatch(
    /^Not for 20 days: the reservoir may stand empty, first on day \d.+ It can for \d/,
  );
  expect(beside.join(' ')).toMatch(/There is no top-off: what evaporates, up to [\d.]+ L a day/);
});

it('says what stands on no reading', () => {
  const question = { now: pair, giveOrTakeDkhPerDay: 0.2, days: 3, visitDays: 0 };
  const asked = { question, away: away(question), isRead: false };
  const { beside } = awaySentences(asked, unread);
  expect(beside.join(' ')).toMatch(
    /No alkalinity has been read.*Nobody has measured the use: 1\.00/s,
  );
});
