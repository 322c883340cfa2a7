import { describe, expect, it } from 'vitest';
import { misses } from './check';
import { computablePublishedRows, publishedChecks } from './checks/published';
import { publishedSetAside } from './publishedSetAside';
import { readTable } from './table';

describe('check values printed in papers, standards and guides', () => {
  it('are met within the tolerance of each row', () => {
    expect(publishedChecks()).toHaveLength(computablePublishedRows.length);
    expect(misses(publishedChecks())).toEqual([]);
  });

  it('are each either checked or set aside with a reason', () => {
    const rows = readTable('published.csv').map((row) => row.text('case_id'));
    const answered = [...computablePublishedRows, ...Object.keys(publishedSetAside)];
    expect(answered.toSorted()).toEqual(rows.toSorted());
  });
});
