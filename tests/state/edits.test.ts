import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Edits } from '../../src/store/edits.svelte';

interface Page {
  readonly at: number;
  readonly theirs: number;
}
type Act =
  | { readonly kind: 'step' | 'undo' | 'redo' | 'settle' | 'theirs' }
  | { readonly kind: 'drag'; readonly name: string };

const anyAct: fc.Arbitrary<Act> = fc.oneof(
  fc.record({ kind: fc.constantFrom('step', 'undo', 'redo', 'settle', 'theirs') }),
  fc.record({ kind: fc.constant('drag' as const), name: fc.constantFrom('volume', 'mix') }),
);

/** What undo and redo should give, kept as two plain lists: the simplest thing that can be right. */
class ByHand {
  past: number[] = [];
  future: number[] = [];
  at = 0;
  private lastName = '';

  change(name: string, to: number): void {
    if (name === '' || name !== this.lastName) {
      this.past.push(this.at);
      this.future = [];
    }
    this.lastName = name;
    this.at = to;
  }
  settle(): void {
    this.lastName = '';
  }
  walk(from: number[], onto: number[]): void {
    const to = from.pop();
    if (to !== undefined) {
      onto.push(this.at);
      this.at = to;
    }
    this.settle();
  }
}

describe('what was done', () => {
  it('is walked back and forth step by step, a drag being one, whatever another window does', () => {
    fc.assert(
      fc.property(fc.array(anyAct, { maxLength: 60 }), (acts) => {
        let [saved, shown, theirs] = [0, 0, 0];
        const edits = new Edits<Page>(
          { at: 0, theirs },
          { shown: ({ at }) => (shown = at), changed: ({ at }) => (saved = at) },
        );
        const hand = new ByHand();
        acts.forEach((act, i) => {
          const next = { at: i + 1, theirs };
          if (act.kind === 'step') {
            edits.step(next);
            hand.settle();
            hand.change('', next.at);
          }
          if (act.kind === 'drag') {
            edits.edit(act.name, next);
            hand.change(act.name, next.at);
          }
          if (act.kind === 'settle') {
            edits.settle();
            hand.settle();
          }
          if (act.kind === 'undo') {
            edits.undo();
            hand.walk(hand.past, hand.future);
          }
          if (act.kind === 'redo') {
            edits.redo();
            hand.walk(hand.future, hand.past);
          }
          if (act.kind === 'theirs') {
            theirs = i + 1;
            const onto = (page: Page) => ({ ...page, theirs });
            edits.follow(onto(edits.now), onto);
          }
          expect(edits.now).toEqual({ at: hand.at, theirs });
          expect([saved, shown]).toEqual([hand.at, hand.at]);
          expect(edits.canUndo).toBe(hand.past.length > 0);
          expect(edits.canRedo).toBe(hand.future.length > 0);
        });
      }),
      { numRuns: 300 },
    );
  });

  it('in one tank is not undone in the next, and what was opened is not saved', () => {
    let saved = 0;
    const edits = new Edits<number>(1, { changed: () => saved++ });
    edits.step(2);
    edits.open(10);
    edits.undo();
    expect([edits.now, edits.canUndo, saved]).toEqual([10, false, 1]);
  });

  it('is kept for 200 steps, and no more', () => {
    const edits = new Edits<number>(0, { changed: () => {} });
    for (let i = 1; i <= 250; i++) edits.step(i);
    let steps = 0;
    for (; edits.canUndo; steps++) edits.undo();
    expect([steps, edits.now]).toEqual([200, 50]);
  });
});
