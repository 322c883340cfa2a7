import { expect, it } from 'vitest';
import { allRead } from '../../src/fields/beingRead';
import { Draft, type Read } from '../../src/fields/draft.svelte';
import { followPresses } from '../../src/fields/pressOver';

/** A field of numbers whose texts are read when told to. */
function field() {
  let value = 8.5;
  const waiting: (() => void)[] = [];
  const draft = new Draft<number>({
    written: () => value.toFixed(2),
    read: (typed) =>
      new Promise<Read<number>>((resolve) =>
        waiting.push(() =>
          resolve(
            Number.isNaN(Number(typed))
              ? { ok: false, message: `${typed} is no number` }
              : { ok: true, value: Number(typed) },
          ),
        ),
      ),
    put: (number) => (value = number),
  });
  const read = async () => {
    waiting.splice(0).forEach((go) => go());
    await allRead();
  };
  return { draft, read, now: () => value };
}

it('shows what is typed until it is taken, then what is in force', async () => {
  const { draft, read, now } = field();
  expect(draft.text).toBe('8.50');
  draft.type('9');
  expect([draft.text, now()]).toEqual(['9', 8.5]);
  draft.take();
  await read();
  expect([draft.text, now(), draft.complaint]).toEqual(['9.00', 9, '']);
});

it('keeps what is refused beside its complaint, until it is taken back', async () => {
  const { draft, read, now } = field();
  draft.type('high');
  draft.take();
  await read();
  expect([draft.text, now(), draft.complaint]).toEqual(['high', 8.5, 'high is no number']);
  draft.drop();
  expect([draft.text, draft.complaint]).toEqual(['8.50', '']);
});

it('does not take what was typed on, or taken back, while it was being read', async () => {
  const { draft, read, now } = field();
  draft.type('9');
  draft.take();
  draft.type('9.7');
  await read();
  expect([draft.text, now()]).toEqual(['9.7', 8.5]);
  draft.take();
  draft.drop();
  await read();
  expect([draft.text, now()]).toEqual(['8.50', 8.5]);
});

it('is waited for by whoever acts on what was typed', async () => {
  const { draft, read, now } = field();
  draft.type('9');
  draft.take();
  let seen: number | undefined;
  const acted = allRead().then(() => (seen = now()));
  await Promise.resolve();
  expect(seen).toBeUndefined();
  await read();
  await acted;
  expect(seen).toBe(9);
});

it('moves nothing from under a finger: what a press makes it give up is put once the press is over', async () => {
  const page = new EventTarget();
  followPresses(page);
  const { draft, read, now } = field();
  draft.type('9');
  page.dispatchEvent(new Event('mousedown'));
  draft.take();
  const put = read();
  await new Promise((later) => setTimeout(later));
  expect([draft.text, now()]).toEqual(['9', 8.5]);
  page.dispatchEvent(new Event('mouseup'));
  await put;
  expect([draft.text, now()]).toEqual(['9.00', 9]);
});
