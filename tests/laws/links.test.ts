import fc from 'fast-check';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../shared/scenario/crc32';
import {
  LONGEST_LINK,
  MOST_LINKED,
  readLink,
  writeLink,
  type LinkRead,
} from '../../shared/scenario/link';
import { seal, unseal } from '../../shared/scenario/linkBytes';
import { anyScenario } from './anyScenario';
import { patience, runsOf } from './size';

const anyPlan = fc.record({
  name: fc.string({ minLength: 1, maxLength: 60, unit: 'grapheme' }),
  scenario: anyScenario,
});
const anyPlans = fc.array(anyPlan, { minLength: 1, maxLength: MOST_LINKED });

async function detailOf(plans: Parameters<typeof writeLink>[0]): Promise<string> {
  const written = await writeLink(plans);
  if (!written.ok) throw new Error(written.message);
  return written.fragment.slice('plan/'.length);
}

/** Plans, or at least one whole sentence; nothing else can come out. */
function expectAnAnswer(read: LinkRead): void {
  if (read.ok) return;
  expect(read.problems.length).toBeGreaterThan(0);
  for (const problem of read.problems) expect(problem).toMatch(/^.{20,2500}[.?]$/su);
}

const sealed = (value: unknown) => `1.${seal(deflateRawSync(JSON.stringify(value)))}`;

describe('a link', () => {
  // The check value that catalogues of CRCs print for CRC-32 over "123456789".
  it('checks itself by the published CRC-32', () => {
    expect(crc32(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  });

  it(
    'of any plans comes back as they were',
    async () => {
      await fc.assert(
        fc.asyncProperty(anyPlans, async (plans) => {
          const detail = await detailOf(plans);
          expect(detail).toMatch(/^1\.[A-Za-z0-9_-]+$/);
          expect(await readLink(detail)).toEqual({ ok: true, plans });
        }),
        // Round trips are quick: always all 500.
        { ...runsOf(500), numRuns: 500 },
      );
    },
    patience,
  );

  // RFC 1951, as another implementation reads it.
  it('is plain raw deflate of JSON behind its check sum', async () => {
    const [plan] = fc.sample(anyPlan, { numRuns: 1, seed: 5 });
    const bytes = unseal((await detailOf([plan!])).slice(2));
    expect(JSON.parse(inflateRawSync(bytes!).toString())).toEqual({ plans: [plan] });
  });

  const anyDamage = fc.oneof(
    fc.record({
      kind: fc.constant('letter' as const),
      at: fc.nat(),
      by: fc.string({ minLength: 1, maxLength: 2 }),
    }),
    fc.record({ kind: fc.constant('cut' as const), at: fc.nat(), by: fc.constant('') }),
    fc.record({
      kind: fc.constant('sealedByte' as const),
      at: fc.nat(),
      by: fc.string({ minLength: 1, maxLength: 1 }),
    }),
    fc.record({ kind: fc.constant('doubled' as const), at: fc.nat(), by: fc.constant('') }),
  );

  /** The same link, damaged on the way, or by someone who knows how to seal it again. */
  function damaged(
    detail: string,
    { kind, at, by }: { kind: string; at: number; by: string },
  ): string {
    const place = at % detail.length;
    if (kind === 'cut') return detail.slice(0, place);
    if (kind === 'doubled') return detail.slice(0, place) + detail.slice(place / 2);
    if (kind === 'letter') return detail.slice(0, place) + by + detail.slice(place + 1);
    const bytes = unseal(detail.slice(2))!;
    bytes[at % bytes.length] = bytes[at % bytes.length]! ^ (1 + (by.charCodeAt(0) % 255));
    return `1.${seal(bytes)}`;
  }

  it(
    'damaged or forged anywhere gives plans or sentences, and never throws',
    async () => {
      const links = await Promise.all(
        fc.sample(anyPlans, { numRuns: 20, seed: 3 }).map((plans) => detailOf(plans)),
      );
      let refused = 0;
      await fc.assert(
        fc.asyncProperty(fc.constantFrom(...links), anyDamage, async (link, damage) => {
          const spoilt = damaged(link, damage);
          const read = await readLink(spoilt);
          expectAnAnswer(read);
          if (!read.ok) refused++;
          // Whoever did not seal it again is always found out.
          else if (spoilt !== link) expect(damage.kind).toBe('sealedByte');
        }),
        runsOf(10_000),
      );
      expect(refused).toBeGreaterThan(0);
    },
    patience,
  );

  it.each([
    ['empty', '', /damaged/],
    ['of a later version', '2.abcd', /version 2.*Update/],
    ['of no version', '0.abcd', /damaged/],
    ['too long', `1.${'A'.repeat(LONGEST_LINK)}`, /at most 30000/],
    [
      'that unfolds without end',
      `1.${seal(deflateRawSync(Buffer.alloc(2e7, 'a')))}`,
      /more than 1000000/,
    ],
    ['that is no JSON', `1.${seal(deflateRawSync('{plans'))}`, /damaged/],
    ['that is no UTF-8', `1.${seal(deflateRawSync(Buffer.from([0x22, 0xff, 0x22])))}`, /damaged/],
    [
      'nested without end',
      sealed({ plans: [] }).slice(0, 2) + seal(deflateRawSync('['.repeat(400_000))),
      /damaged/,
    ],
    ['with no plans', sealed({ plans: [] }), /other than plans/],
    [
      'with too many plans',
      sealed({ plans: Array(5).fill({ name: 'a', scenario: {} }) }),
      /other than plans/,
    ],
    [
      'with a prototype for a plan',
      sealed({ plans: [{ name: 'a', scenario: { __proto__: 1 } }] }),
      /kind of file/,
    ],
    [
      'with a number that no tank has',
      sealed({
        plans: [
          {
            name: 'a',
            scenario: {
              type: 'paper-reef/scenario',
              version: 4,
              title: 'x',
              days: 3,
              tank: { volumeL: 1e9, alkalinityDkh: 8 },
            },
          },
        ],
      }),
      /tank.volumeL/,
    ],
  ])('%s is refused in a sentence', async (_, detail, words) => {
    const read = await readLink(detail);
    expectAnAnswer(read);
    expect(read.ok ? '' : read.problems.join(' ')).toMatch(words);
  });

  it('that would be too long is not written, and says what to do instead', async () => {
    const [scenario] = fc.sample(anyScenario, { numRuns: 1, seed: 1 });
    const [noise = ''] = fc.sample(fc.string({ minLength: 40_000, maxLength: 40_000 }), {
      numRuns: 1,
      seed: 1,
    });
    const written = await writeLink([{ name: noise, scenario: scenario! }]);
    expect(written.ok ? '' : written.message).toMatch(/Save them as files instead/);
  });
});
